package io.github.tapwright.note;

import io.github.tapwright.signal.ComplexLine;
import io.github.tapwright.signal.LineShape;

/**
 * A run of bins around one partial, to be fitted.
 *
 * <p>Besides the partial it may hold what varies slowly over the bins: far lines and the dying body. A
 * {@link ComplexLine} over frequency takes that up.
 */
final class LineBand {

    private final int firstBin;
    private final double[] rows;
    private final LineShape shape;
    private final double binHz;
    private final ComplexLine line;

    LineBand(int firstBin, double[] rows, LineShape shape, double binHz) {
        this.firstBin = firstBin;
        this.rows = rows;
        this.shape = shape;
        this.binHz = binHz;
        this.line = new ComplexLine(shape.bins());
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

    /** What is fitted besides the partial. */
    ComplexLine line() {
        return line;
    }
}
