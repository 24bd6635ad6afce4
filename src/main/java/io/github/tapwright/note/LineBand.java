package io.github.tapwright.note;

import io.github.tapwright.signal.LineShape;

/**
 * A run of bins around one partial, to be fitted.
 *
 * <p>Besides the partial it may hold what varies slowly over the bins: far lines and the dying body. A complex
 * straight line over frequency, four real columns, takes that up.
 */
final class LineBand {

    private final int firstBin;
    private final double[] rows;
    private final LineShape shape;
    private final double binHz;

    LineBand(int firstBin, double[] rows, LineShape shape, double binHz) {
        this.firstBin = firstBin;
        this.rows = rows;
        this.shape = shape;
        this.binHz = binHz;
    }

    int bins() {
        return shape.bins();
    }

    double hz(int i) {
        return (firstBin + i) * binHz;
    }

    double lowHz() {
        return hz(0);
    }

    double highHz() {
        return hz(bins() - 1);
    }

    double binHz() {
        return binHz;
    }

    LineShape shape() {
        return shape;
    }

    /** Real parts of the bins, then imaginary parts; shared inside the package, nobody changes it. */
    double[] rows() {
        return rows;
    }

    double energy() {
        double sum = 0;
        for (double r : rows) {
            sum += r * r;
        }
        return sum;
    }

    /** The slow columns: 1 and the distance from the middle, in the real and in the imaginary part. */
    double[][] companions() {
        int bins = bins();
        double[][] columns = new double[4][2 * bins];
        for (int i = 0; i < bins; i++) {
            double x = (2.0 * i - bins + 1) / bins;
            columns[0][i] = 1;
            columns[1][bins + i] = 1;
            columns[2][i] = x;
            columns[3][bins + i] = x;
        }
        return columns;
    }
}
