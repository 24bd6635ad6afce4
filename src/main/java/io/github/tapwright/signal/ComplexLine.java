package io.github.tapwright.signal;

/**
 * The complex straight line over a run of bins: what varies slowly there, such as the tails of far resonances.
 *
 * <p>Rows hold the bins' real parts, then their imaginary parts, so the line has four real columns: a height and a slope in
 * each part. With places counted from the middle these are orthogonal, and least squares is a mean and a moment:
 * height Σx/n, slope Σp·x/Σp².
 */
public final class ComplexLine {

    /** How many real columns it has. */
    public static final int COLUMNS = 4;

    private final double[] fromMiddle;
    private final double spread;

    /**
     * Prepares a run of bins.
     *
     * @param bins how many, at least 1
     */
    public ComplexLine(int bins) {
        fromMiddle = new double[bins];
        for (int i = 0; i < bins; i++) {
            fromMiddle[i] = (2.0 * i - bins + 1) / bins;
        }
        spread = ScalarProduct.of(fromMiddle, fromMiddle);
    }

    /**
     * Takes the line that fits best away from some rows; both parts at once, as neither waits for the other.
     *
     * @param rows shape [2·bins], changed in place
     */
    public void takeAway(double[] rows) {
        int bins = fromMiddle.length;
        double sum = 0;
        double moment = 0;
        double imaginarySum = 0;
        double imaginaryMoment = 0;
        for (int i = 0; i < bins; i++) {
            double place = fromMiddle[i];
            sum += rows[i];
            moment += place * rows[i];
            imaginarySum += rows[bins + i];
            imaginaryMoment += place * rows[bins + i];
        }
        double slope = spread > 0 ? moment / spread : 0;
        double imaginarySlope = spread > 0 ? imaginaryMoment / spread : 0;
        double mean = sum / bins;
        double imaginaryMean = imaginarySum / bins;
        for (int i = 0; i < bins; i++) {
            rows[i] -= mean + slope * fromMiddle[i];
            rows[bins + i] -= imaginaryMean + imaginarySlope * fromMiddle[i];
        }
    }

    /**
     * Its columns: 1 and the distance from the middle, in the real and in the imaginary part.
     *
     * @return shape [4][2·bins]
     */
    public double[][] columns() {
        int bins = fromMiddle.length;
        double[][] columns = new double[COLUMNS][2 * bins];
        for (int i = 0; i < bins; i++) {
            columns[0][i] = 1;
            columns[1][bins + i] = 1;
            columns[2][i] = fromMiddle[i];
            columns[3][bins + i] = fromMiddle[i];
        }
        return columns;
    }
}
