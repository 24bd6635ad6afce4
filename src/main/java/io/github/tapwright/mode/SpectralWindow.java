package io.github.tapwright.mode;

import io.github.tapwright.signal.ComplexLine;
import io.github.tapwright.signal.LineShape;
import io.github.tapwright.signal.OrthonormalBasis;
import io.github.tapwright.signal.ScalarProduct;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A run of spectral bins of all decays, and what is fitted there besides the poles.
 *
 * <p>Rows are the bins' real parts, then their imaginary parts. Always fitted along: a straight line over frequency
 * (the far tails of resonances outside) and steady mains tones. These companions are the same for every set of poles, so
 * they are taken away from the data once and from every pole's columns as they come.
 */
final class SpectralWindow {

    /** Share of a column's energy below which only rounding is left of it. */
    private static final double NOTHING_LEFT = 1e-24;

    private final LineShape shape;
    private final double[][] data;
    private final OrthonormalBasis tones;
    private final double energy;

    private SpectralWindow(LineShape shape, double[][] data, List<double[]> tones) {
        this.shape = shape;
        this.data = data;
        this.tones = new OrthonormalBasis(tones.size(), new ComplexLine(shape.bins())::takeAway);
        tones.forEach(this.tones::add);
        double sum = 0;
        for (double[] strike : data) {
            sum += ScalarProduct.of(strike, strike);
            this.tones.takeAway(strike);
        }
        this.energy = sum;
    }

    /**
     * Cuts a window out of the decays' spectra, resonances outside it taken off.
     *
     * @param spectra the decays' spectra
     * @param lowHz lower edge
     * @param highHz upper edge
     * @param outside poles outside the window with their strengths, subtracted
     * @return the window
     */
    static SpectralWindow of(DecaySpectra spectra, double lowHz, double highHz, List<SharedMode> outside) {
        int first = spectra.bin(lowHz);
        int bins = Math.max(4, spectra.bin(highHz) - first + 1);
        LineShape shape = new LineShape(first, bins, spectra.length(), spectra.rateHz());
        double[][] data = spectra.rows(first, bins);
        double[][] columns = new double[4][2 * bins];
        for (SharedMode mode : outside) {
            shape.fill(mode.pole().omega(), mode.pole().sigma(), columns);
            for (int s = 0; s < data.length; s++) {
                for (int r = 0; r < data[s].length; r++) {
                    data[s][r] -= mode.cosine(s) * columns[0][r] + mode.sine(s) * columns[1][r];
                }
            }
        }
        return new SpectralWindow(shape, data, hum(shape, spectra, lowHz, highHz));
    }

    private static List<double[]> hum(LineShape shape, DecaySpectra spectra, double lowHz, double highHz) {
        List<double[]> tones = new ArrayList<>();
        for (double hz : spectra.humHz()) {
            if (hz > lowHz - 5 && hz < highHz + 5) {
                double[][] columns = new double[4][2 * shape.bins()];
                shape.fill(2 * Math.PI * hz, 0, columns);
                tones.add(columns[0]);
                tones.add(columns[1]);
            }
        }
        return tones;
    }

    LineShape shape() {
        return shape;
    }

    /** One strike's rows, companions taken away; shared inside the package, nobody changes it. */
    double[] data(int strike) {
        return data[strike];
    }

    /**
     * A pole's columns as {@link LineShape#fill} orders them, companions taken away, shape [4][rows]. Of a column that
     * is nothing but companions zeros are left, not rounding.
     */
    double[][] columns(Pole pole) {
        double[][] columns = new double[4][rows()];
        shape.fill(pole.omega(), pole.sigma(), columns);
        for (double[] column : columns) {
            takeCompanionsAway(column);
        }
        return columns;
    }

    private void takeCompanionsAway(double[] column) {
        double before = ScalarProduct.of(column, column);
        tones.takeAway(column);
        if (ScalarProduct.of(column, column) <= NOTHING_LEFT * before) {
            Arrays.fill(column, 0);
        }
    }

    /** How many real columns are fitted besides the poles'. */
    int companionCount() {
        return ComplexLine.COLUMNS + tones.size();
    }

    int rows() {
        return 2 * shape.bins();
    }

    int strikes() {
        return data.length;
    }

    /** Sum of squares of the data, companions and all. */
    double energy() {
        return energy;
    }
}
