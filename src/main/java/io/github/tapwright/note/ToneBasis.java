package io.github.tapwright.note;

/**
 * Orthonormal columns that span the tones of a fit and the straight line of its band.
 *
 * <p>Modified Gram-Schmidt, which gives least squares as stable as Householder's if the data are taken through the same steps.
 * Source: [Bjorck1967].
 */
final class ToneBasis {

    /** A column that others explain to so much of its length adds nothing that rounding has left. */
    private static final double DEPENDENT = 1e-12;

    private final LineBand band;
    private final double[][] q;
    private final double[][] triangle;
    private int size;

    ToneBasis(LineBand band, int most) {
        this.band = band;
        this.q = new double[most][];
        this.triangle = new double[most][most];
    }

    /** Takes a column in; the column stays as it is. */
    void add(double[] column) {
        double[] x = column.clone();
        double whole = Math.sqrt(dot(x, x));
        double[] shares = takeAway(x);
        for (int j = 0; j < size; j++) {
            triangle[j][size] = shares[j];
        }
        double length = Math.sqrt(dot(x, x));
        boolean isNew = length > DEPENDENT * whole;
        triangle[size][size] = isNew ? length : 0;
        double scale = isNew ? 1 / length : 0;
        for (int r = 0; r < x.length; r++) {
            x[r] *= scale;
        }
        q[size++] = x;
    }

    /**
     * Takes away from some rows all that lies within the basis and the straight line.
     *
     * @param rows changed in place
     * @return how much of each basis column was in them
     */
    double[] takeAway(double[] rows) {
        band.takeLineAway(rows);
        double[] shares = new double[q.length];
        for (int j = 0; j < size; j++) {
            double[] column = q[j];
            double share = dot(column, rows);
            for (int r = 0; r < rows.length; r++) {
                rows[r] -= share * column[r];
            }
            shares[j] = share;
        }
        return shares;
    }

    /** From shares of the basis columns to strengths of the columns that were taken in; 0 for a dependent one. */
    double[] solve(double[] shares) {
        double[] x = shares.clone();
        for (int i = size - 1; i >= 0; i--) {
            for (int j = i + 1; j < size; j++) {
                x[i] -= triangle[i][j] * x[j];
            }
            x[i] = triangle[i][i] == 0 ? 0 : x[i] / triangle[i][i];
        }
        return x;
    }

    /** Scalar product, in four running sums that need not wait for each other. */
    static double dot(double[] x, double[] y) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int r = 0;
        for (; r + 3 < x.length; r += 4) {
            a += x[r] * y[r];
            b += x[r + 1] * y[r + 1];
            c += x[r + 2] * y[r + 2];
            d += x[r + 3] * y[r + 3];
        }
        for (; r < x.length; r++) {
            a += x[r] * y[r];
        }
        return (a + b) + (c + d);
    }
}
