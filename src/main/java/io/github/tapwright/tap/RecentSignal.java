package io.github.tapwright.tap;

import java.util.Arrays;

/** The last part of a signal that goes on and on; what is older is forgotten. */
final class RecentSignal {

    private final int kept;
    private double[] samples = new double[8192];
    private long firstPosition;
    private int length;

    /** A signal of which at least the last {@code kept} samples are remembered. */
    RecentSignal(int kept) {
        this.kept = kept;
    }

    void append(double[] more) {
        if (length + more.length > samples.length && length > kept) {
            int forgotten = length - kept;
            System.arraycopy(samples, forgotten, samples, 0, kept);
            length = kept;
            firstPosition += forgotten;
        }
        if (length + more.length > samples.length) {
            samples = Arrays.copyOf(samples, Math.max(length + more.length, 2 * samples.length));
        }
        System.arraycopy(more, 0, samples, length, more.length);
        length += more.length;
    }

    /** Where the signal ends, counted from its start. */
    long end() {
        return firstPosition + length;
    }

    /** A copy of what was heard between two positions, which must not be forgotten yet. */
    double[] between(long from, long to) {
        return Arrays.copyOfRange(samples, Math.toIntExact(from - firstPosition), Math.toIntExact(to - firstPosition));
    }
}
