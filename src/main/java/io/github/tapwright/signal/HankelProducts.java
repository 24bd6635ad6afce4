package io.github.tapwright.signal;

/**
 * What the rows of a Hankel matrix of a stretch of signal share: C[i][j] = Σ x[n+i]·x[n+j] over its columns.
 *
 * <p>Only the last row is summed. One step up the diagonal the same products stand there but for the last, which drops out, and
 * one more at the beginning. Of a decaying sound that way nothing small is left over from something large.
 */
public final class HankelProducts {

    private HankelProducts() {}

    /**
     * Adds the products of one stretch.
     *
     * @param signal the samples
     * @param from the stretch's first sample
     * @param to one past its last, so that there are to − from − rows + 1 columns, at least one
     * @param divisor what each sum is divided by, such as the stretch's energy
     * @param into C, shape [rows][rows], added to; both triangles are filled
     */
    public static void add(double[] signal, int from, int to, double divisor, double[][] into) {
        int rows = into.length;
        int columns = to - from - rows + 1;
        for (int lag = 0; lag < rows; lag++) {
            double sum = 0;
            for (int n = to - columns; n < to; n++) {
                sum += signal[n] * signal[n - lag];
            }
            for (int i = rows - 1; i >= lag; i--) {
                into[i][i - lag] += sum / divisor;
                into[i - lag][i] = into[i][i - lag];
                int before = from + i - 1;
                int last = before + columns;
                if (before >= lag + from) {
                    sum += signal[before] * signal[before - lag] - signal[last] * signal[last - lag];
                }
            }
        }
    }
}
