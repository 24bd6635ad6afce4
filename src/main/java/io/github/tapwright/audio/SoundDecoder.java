package io.github.tapwright.audio;

import java.io.IOException;
import java.util.List;
import java.util.OptionalLong;

/** One kind of sound file, decoded block by block; free to fail in any way, because it is guarded. */
interface SoundDecoder extends AutoCloseable {

    /** What the file is, known from the first moment. */
    SoundFormat format();

    /** How many samples a channel the header promises, if it makes a promise at all. */
    OptionalLong promisedSamples();

    /**
     * Decodes the next samples.
     *
     * @param block shape [channel][capacity], filled from index 0
     * @return samples decoded into every channel; 0 at the end
     */
    int decode(double[][] block) throws IOException;

    /** What was odd so far, one line each. */
    List<String> notices();

    @Override
    void close() throws IOException;
}
