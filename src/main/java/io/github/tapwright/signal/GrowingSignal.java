package io.github.tapwright.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Samples that arrive block by block and whose number is not known beforehand. They are kept in the pieces they came in and
 * joined once, at the end: writing memory is slow, and a room that grows would be written several times.
 */
public final class GrowingSignal {

    private final List<double[]> pieces = new ArrayList<>();
    private int length;

    /**
     * Takes more samples.
     *
     * @param more left unchanged, and free to be used again
     * @param count how many of them count
     * @throws IndexOutOfBoundsException if there are not so many
     */
    public void append(double[] more, int count) {
        Objects.checkFromIndexSize(0, count, more.length);
        if (count > 0) {
            pieces.add(Arrays.copyOf(more, count));
            length += count;
        }
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
     * All samples taken, in one row.
     *
     * @return the signal's own array, not a copy and not to be changed, shape [length]; for whoever is done appending
     */
    public double[] joined() {
        if (pieces.size() != 1) {
            double[] whole = new double[length];
            int at = 0;
            for (double[] piece : pieces) {
                System.arraycopy(piece, 0, whole, at, piece.length);
                at += piece.length;
            }
            pieces.clear();
            pieces.add(whole);
        }
        return pieces.get(0);
    }
}
