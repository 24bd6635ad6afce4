package io.github.tapwright.synthesis;

import java.util.Random;

/** Seeded chance: neighbouring seeds of the library's own generator begin almost alike, so they are stirred first. */
public final class Chance {

    private static final long STIR = 0x9E3779B97F4A7C15L;

    private Chance() {}

    /**
     * A generator of its own for every seed.
     *
     * @param seed any number
     */
    public static Random seeded(long seed) {
        long stirred = seed * STIR;
        return new Random(stirred ^ (stirred >>> 29));
    }
}
