package io.github.tapwright.mode;

import io.github.tapwright.signal.LineShape;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * A run of spectral bins of all decays, and what is fitted there besides the poles.
 *
 * <p>Rows are the bins' real parts, then their imaginary parts; one column for each strike. Always fitted
 * along: a straight line over frequency (the far tails of resonances outside) and steady mains tones.
 */
final class SpectralWindow {

    private final LineShape shape;
    private final DMatrixRMaj data;
    private final List<double[]> companions;
    private final double energy;

    private SpectralWindow(LineShape shape, DMatrixRMaj data, List<double[]> companions) {
        this.shape = shape;
        this.data = data;
        this.companions = companions;
        double sum = 0;
        for (double x : data.data) {
            sum += x * x;
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
        DMatrixRMaj data = spectra.rows(first, bins);
        double[][] columns = new double[4][2 * bins];
        for (SharedMode mode : outside) {
            shape.fill(mode.pole().omega(), mode.pole().sigma(), columns);
            for (int s = 0; s < data.numCols; s++) {
                for (int r = 0; r < data.numRows; r++) {
                    data.add(r, s, -mode.cosine(s) * columns[0][r] - mode.sine(s) * columns[1][r]);
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

    DMatrixRMaj data() {
        return data;
    }

    List<double[]> companions() {
        return companions;
    }

    int rows() {
        return data.numRows;
    }

    int strikes() {
        return data.numCols;
    }

    /** Sum of squares of the data. */
    double energy() {
        return energy;
    }
}
