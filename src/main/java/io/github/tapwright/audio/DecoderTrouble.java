package io.github.tapwright.audio;

import java.io.IOException;

/** Compressed sound that a decoder cannot make sense of. */
final class DecoderTrouble extends IOException {

    private static final long serialVersionUID = 1L;

    DecoderTrouble(String what) {
        super(what);
    }

    DecoderTrouble(String what, Throwable cause) {
        super(what, cause);
    }
}
