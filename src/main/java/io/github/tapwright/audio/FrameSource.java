package io.github.tapwright.audio;

import java.io.IOException;

/** A library that decodes one packet of compressed sound after the other. */
interface FrameSource {

    /**
     * Decodes packets until one gives samples.
     *
     * @return false at the proper end of the sound
     */
    boolean next(DecodedFrame into) throws IOException;
}
