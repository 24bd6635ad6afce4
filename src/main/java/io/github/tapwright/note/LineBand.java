package io.github.tapwright.note;

import io.github.tapwright.signal.LineShape;
import io.github.tapwright.signal.ScalarProduct;

/**
 * A run of bins around one partial, to be fitted.
 *
 * <p>Besides the partial it may hold what varies slowly over the bins: far lines and the dying body. A complex
 * straight line over frequency, four real columns, takes that up.
 */
final class LineBand {

    /** How many real columns the straight line has. */
    static final int COMPANIONS = 4;

    private final int firstBin;
    private final double[] rows;
    private final LineShape shape;
    private final double binHz;
    private final double[] fromMiddle;
    private final double spread;

    LineBand(int firstBin, double[] rows, LineShape shape, double binHz) {
        this.firstBin = firstBin;
        this.rows = rows;
        this.shape = shape;
        this.binHz = binHz;
        this.fromMiddle = new double[shape.bins()];
        for (int i = 0; i < fromMiddle.length; i++) {
            fromMiddle[i] = (2.0 * i - fromMiddle.length + 1) / fromMiddle.length;
        }
        this.spread = ScalarProduct.of(fromMiddle, fromMiddle);
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

    /** Takes the complex straight line that fits best away from some rows; both parts at once, as neither waits for the other. */
    void takeLineAway(double[] x) {
        int bins = bins();
        double sum = 0;
        double moment = 0;
        double imaginarySum = 0;
        double imaginaryMoment = 0;
        for (int i = 0; i < bins; i++) {
            double place = fromMiddle[i];
            sum += x[i];
            moment += place * x[i];
            imaginarySum += x[bins + i];
            imaginaryMoment += place * x[bins + i];
        }
        double slope = spread > 0 ? moment / spread : 0;
        double imaginarySlope = spread > 0 ? imaginaryMoment / spread : 0;
        double mean = sum / bins;
        double imaginaryMean = imaginarySum / bins;
        for (int i = 0; i < bins; i++) {
            x[i] -= mean + slope * fromMiddle[i];
            x[bins + i] -= imaginaryMean + imaginarySlope * fromMiddle[i];
        }
    }

    /** The slow columns: 1 and the distance from the middle, in the real and in the imaginary part. */
    double[][] companions() {
        int bins = bins();
        double[][] columns = new double[COMPANIONS][2 * bins];
        for (int i = 0; i < bins; i++) {
            double x = fromMiddle[i];
            columns[0][i] = 1;
            columns[1][bins + i] = 1;
            columns[2][i] = x;
            columns[3][bins + i] = x;
        }
        return columns;
    }
}
