package io.github.tapwright.tap;

import io.github.tapwright.statistics.Median;
import java.util.Arrays;

/** How far each strike's spectrum lies from the median of all, its strength taken out. */
final class SpectralDistance {

    private static final int BANDS_PER_OCTAVE = 3;
    private static final double RELEVANT_DB = 35;

    private final double[][] bandDb;

    SpectralDistance(Decays decays, TapSettings settings) {
        bandDb = BandLevels.of(decays, settings, BANDS_PER_OCTAVE);
    }

    /** Root mean square difference from the median spectrum over the bands that matter, dB per strike. */
    double[] distancesDb() {
        int bands = bandDb[0].length;
        double[] middle = new double[bands];
        double top = Double.NEGATIVE_INFINITY;
        for (int b = 0; b < bands; b++) {
            int band = b;
            middle[b] =
                    Median.of(Arrays.stream(bandDb).mapToDouble(s -> s[band]).toArray());
            top = Math.max(top, middle[b]);
        }
        double[] distances = new double[bandDb.length];
        for (int s = 0; s < bandDb.length; s++) {
            double sum = 0;
            int count = 0;
            for (int b = 0; b < bands; b++) {
                if (Math.max(middle[b], bandDb[s][b]) > top - RELEVANT_DB) {
                    double floor = top - RELEVANT_DB;
                    double d = Math.max(bandDb[s][b], floor) - Math.max(middle[b], floor);
                    sum += d * d;
                    count++;
                }
            }
            distances[s] = Math.sqrt(sum / Math.max(1, count));
        }
        return distances;
    }
}
