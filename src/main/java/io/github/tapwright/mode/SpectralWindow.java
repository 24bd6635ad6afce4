package io.github.tapwright.mode;

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
    private final OrthonormalBasis companions;
    private final double energy;

    private SpectralWindow(LineShape shape, double[][] data, List<double[]> companions) {
        this.shape = shape;
        this.data = data;
        this.companions = new OrthonormalBasis(companions.size());
        companions.forEach(this.companions::add);
        double sum = 0;
        for (double[] strike : data) {
            sum += ScalarProduct.of(strike, strike);
            this.companions.takeAway(strike);
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
        return new SpectralWindow(shape, data, companions(shape, spectra, lowHz, highHz));
    }

    private static List<double[]> companions(LineShape shape, DecaySpectra spectra, double lowHz, double highHz) {
        List<double[]> companions = new ArrayList<>();
        int bins = shape.bins();
        for (int power = 0; power < 2; power++) {
            double[] re = new double[2 * bins];
            double[] im = new double[2 * bins];
            for (int i = 0; i < bins; i++) {
                double x = Math.pow(2.0 * i / (bins - 1) - 1, power);
                re[i] = x;
                im[i + bins] = x;
            }
            companions.add(re);
            companions.add(im);
        }
        for (double hz : spectra.humHz()) {
            if (hz > lowHz - 5 && hz < highHz + 5) {
                double[][] columns = new double[4][2 * bins];
                shape.fill(2 * Math.PI * hz, 0, columns);
                companions.add(columns[0]);
                companions.add(columns[1]);
            }
        }
        return companions;
    }

    LineShape shape() {
        return shape;
    }

    /** One strike's rows, companions taken away; shared inside the package, nobody changes it. */
    double[] data(int strike) {
        return data[strike];
    }

    /**
     * A pole's columns as {@link LineShape#fill} orders them, shape [4][rows]. Companions are taken away from its cosine
     * and sine, not from the derivatives; of a column that is nothing but companions zeros are left, not rounding.
     */
    double[][] columns(Pole pole) {
        double[][] columns = new double[4][rows()];
        shape.fill(pole.omega(), pole.sigma(), columns);
        takeCompanionsAway(columns[0]);
        takeCompanionsAway(columns[1]);
        return columns;
    }

    private void takeCompanionsAway(double[] column) {
        double before = ScalarProduct.of(column, column);
        companions.takeAway(column);
        if (ScalarProduct.of(column, column) <= NOTHING_LEFT * before) {
            Arrays.fill(column, 0);
        }
    }

    /** How much of each of the companions' orthonormal columns is in some rows. */
    double[] companionShares(double[] rows) {
        return companions.shares(rows);
    }

    /** How many real columns are fitted besides the poles'. */
    int companionCount() {
        return companions.size();
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
