package io.github.tapwright.signal;

import java.util.function.Consumer;

/**
 * Orthonormal columns that span the columns of a least-squares fit, taken in one by one.
 *
 * <p>Modified Gram-Schmidt: X = Q·R, column by column, a column twice where the others explain nearly all of it, so that Q
 * stays orthogonal to rounding however alike the columns are. As Q is that, two of its columns can be taken away at once, in
 * two thirds of the time. Data go through the same steps in {@link #takeAway}, which gives least squares as stable as
 * Householder's. Whatever else the fit holds (a straight line, a hum) can be taken away from every column and from the data
 * beforehand. Source: [Bjorck1967]; when a second time is needed, [DanielGraggKaufmanStewart1976].
 */
public final class OrthonormalBasis {

    /** A column that others explain to so much of its length adds nothing that rounding has left. */
    private static final double DEPENDENT = 1e-12;

    /** Where less than this is left of a column, what rounding left along the others is no longer small beside it. */
    private static final double LITTLE_LEFT = 0.1;

    private final Consumer<double[]> beforehand;
    private final double[][] q;
    private final double[][] triangle;
    private int size;

    /**
     * An empty basis.
     *
     * @param most how many columns it will take in at most
     * @param beforehand changes rows in place: takes away a space of its own, which is no part of this basis
     */
    public OrthonormalBasis(int most, Consumer<double[]> beforehand) {
        this.beforehand = beforehand;
        this.q = new double[most][];
        this.triangle = new double[most][most];
    }

    /**
     * An empty basis with nothing taken away beforehand.
     *
     * @param most how many columns it will take in at most
     */
    public OrthonormalBasis(int most) {
        this(most, rows -> {});
    }

    /**
     * Takes a column in.
     *
     * @param column as long as all others; it stays as it is
     */
    public void add(double[] column) {
        double[] x = column.clone();
        double whole = Math.sqrt(ScalarProduct.of(x, x));
        double[] shares = takeAway(x);
        double length = Math.sqrt(ScalarProduct.of(x, x));
        if (length < LITTLE_LEFT * whole) {
            double[] more = takeAway(x);
            for (int j = 0; j < size; j++) {
                shares[j] += more[j];
            }
            length = Math.sqrt(ScalarProduct.of(x, x));
        }
        for (int j = 0; j < size; j++) {
            triangle[j][size] = shares[j];
        }
        boolean isNew = length > DEPENDENT * whole;
        triangle[size][size] = isNew ? length : 0;
        double scale = isNew ? 1 / length : 0;
        for (int r = 0; r < x.length; r++) {
            x[r] *= scale;
        }
        q[size++] = x;
    }

    /**
     * How many columns were taken in.
     *
     * @return with those that depend on others
     */
    public int size() {
        return size;
    }

    /**
     * Takes away from some rows all that lies within the basis, and within the space taken away beforehand.
     *
     * @param rows changed in place
     * @return how much of each column of Q was in them
     */
    public double[] takeAway(double[] rows) {
        beforehand.accept(rows);
        double[] shares = new double[q.length];
        int j = 0;
        for (; j + 1 < size; j += 2) {
            takeTwoAway(rows, j, shares);
        }
        if (j < size) {
            double[] last = q[j];
            double share = ScalarProduct.of(rows, last);
            for (int r = 0; r < rows.length; r++) {
                rows[r] -= share * last[r];
            }
            shares[j] = share;
        }
        return shares;
    }

    private void takeTwoAway(double[] rows, int j, double[] shares) {
        ScalarProduct.ofTwo(rows, q, j, shares);
        double[] p = q[j];
        double[] s = q[j + 1];
        double ofP = shares[j];
        double ofS = shares[j + 1];
        for (int r = 0; r < rows.length; r++) {
            rows[r] -= ofP * p[r] + ofS * s[r];
        }
    }

    /**
     * How much of each column of Q is in some rows as they are, Qᵀ·rows: nothing is taken away beforehand.
     *
     * @param rows left as they are
     * @return one for each column of Q
     */
    public double[] shares(double[] rows) {
        double[] shares = new double[q.length];
        ScalarProduct.ofEach(rows, q, size, shares);
        return shares;
    }

    /**
     * Strengths x of the columns that were taken in: R·x = shares.
     *
     * @param shares of the columns of Q, as {@link #takeAway} tells them
     * @return one for each column, 0 for one that depends on those before it
     */
    public double[] solve(double[] shares) {
        double[] x = shares.clone();
        for (int i = size - 1; i >= 0; i--) {
            for (int j = i + 1; j < size; j++) {
                x[i] -= triangle[i][j] * x[j];
            }
            x[i] = triangle[i][i] == 0 ? 0 : x[i] / triangle[i][i];
        }
        return x;
    }
}
