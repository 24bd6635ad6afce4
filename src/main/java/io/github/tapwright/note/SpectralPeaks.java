package io.github.tapwright.note;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.signal.Window;
import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Peaks of a short windowed spectrum that stand out of their surroundings, lowest first.
 *
 * <p>Four-term Blackman-Harris window [Harris1978]; place and height by a parabola through the logarithms of three bins.
 */
final class SpectralPeaks {

    /**
     * One peak.
     *
     * @param hz where
     * @param levelDb its height re the highest peak, 0 or less
     */
    record Peak(double hz, double levelDb) {}

    private static final double LOWEST_HZ = 25;
    private static final double RANGE_DB = 75;

    /** A peak between two bins is less than this above the higher of them. Source: [Harris1978]. */
    private static final double BETWEEN_BINS_DB = 1;

    /** The lower quartile of noise lies 5.4 dB below its mean, and no noise peak in thousands 10.6 dB above it. */
    private static final double ABOVE_FLOOR_DB = 16;

    private static final int FLOOR_BINS = 48;
    private static final int MAIN_LOBE_BINS = 2;

    private final List<Peak> peaks;
    private final double binHz;

    /**
     * Looks for peaks.
     *
     * @param signal samples
     * @param from first sample of the stretch
     * @param to one past the last
     * @param rateHz samples per second
     * @param highestHz end of the search
     */
    SpectralPeaks(double[] signal, int from, int to, double rateHz, double highestHz) {
        int length = (to - from) / 4 * 4;
        double[] window = Window.BLACKMAN_HARRIS.periodic(length);
        for (int n = 0; n < length; n++) {
            window[n] *= signal[from + n];
        }
        double[] db = new Fourier(length).power(window);
        for (int k = 0; k < db.length; k++) {
            db[k] = 10 * Math.log10(db[k] + 1e-30);
        }
        binHz = rateHz / length;
        peaks = find(db, (int) Math.min(db.length - 3, highestHz / binHz));
    }

    private List<Peak> find(double[] db, int last) {
        List<Peak> found = new ArrayList<>();
        double top = Double.NEGATIVE_INFINITY;
        int first = (int) Math.max(MAIN_LOBE_BINS, LOWEST_HZ / binHz);
        double tooFaint =
                Arrays.stream(db, first, Math.max(first, last + 1)).max().orElse(0) - RANGE_DB - BETWEEN_BINS_DB;
        for (int k = first; k <= last; k++) {
            boolean highest = db[k] > tooFaint;
            for (int i = k - MAIN_LOBE_BINS; i <= k + MAIN_LOBE_BINS; i++) {
                highest &= db[i] <= db[k];
            }
            if (highest && db[k] > floorDb(db, k) + ABOVE_FLOOR_DB) {
                double bend = db[k - 1] - 2 * db[k] + db[k + 1];
                double shift = bend == 0 ? 0 : 0.5 * (db[k - 1] - db[k + 1]) / bend;
                double height = db[k] - 0.25 * (db[k - 1] - db[k + 1]) * shift;
                found.add(new Peak((k + shift) * binHz, height));
                top = Math.max(top, height);
            }
        }
        double reference = top;
        return found.stream()
                .filter(p -> p.levelDb() > reference - RANGE_DB)
                .map(p -> new Peak(p.hz(), p.levelDb() - reference))
                .toList();
    }

    /** The lower quartile of the neighbourhood: lines may fill half of it. */
    private static double floorDb(double[] db, int k) {
        int low = Math.max(0, k - FLOOR_BINS);
        return Median.quantile(Arrays.copyOfRange(db, low, Math.min(db.length, k + FLOOR_BINS + 1)), 0.25);
    }

    List<Peak> peaks() {
        return peaks;
    }

    double binHz() {
        return binHz;
    }
}
