package io.github.tapwright.signal;

import java.util.Arrays;

/** Samples that arrive block by block and whose number is not known beforehand. */
public final class GrowingSignal {

    private static final int FIRST_ROOM = 8192;

    private double[] samples = new double[FIRST_ROOM];
    private int length;

    /**
     * Takes more samples.
     *
     * @param more left unchanged
     * @param count how many of them count
     */
    public void append(double[] more, int count) {
        if (length + count > samples.length) {
            samples = Arrays.copyOf(samples, Math.max(length + count, 2 * samples.length));
        }
        System.arraycopy(more, 0, samples, length, count);
        length += count;
    }

    /**
     * How many samples there are.
     *
     * @return 0 or more
     */
    public int length() {
        return length;
    }

    /**
     * All samples taken; spare room is given back.
     *
     * @return the signal's own array, not a copy, shape [length]; for whoever is done appending
     */
    public double[] trimmed() {
        samples = Arrays.copyOf(samples, length);
        return samples;
    }
}
