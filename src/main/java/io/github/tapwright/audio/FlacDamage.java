package io.github.tapwright.audio;

import java.io.IOException;

/** A FLAC stream that breaks the format's own rules, found by this reader rather than by the disk. */
final class FlacDamage extends IOException {

    private static final long serialVersionUID = 1L;

    FlacDamage(String rule) {
        super(rule);
    }
}
