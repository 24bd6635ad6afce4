package io.github.tapwright.tap;

import io.github.tapwright.signal.Fourier;
import java.util.Arrays;

/** The spectra of strikes in bands that are alike on a logarithmic scale, their strength taken out. */
final class BandLevels {

    private static final int FEWEST_BANDS = 3;

    private BandLevels() {}

    /** By strike and band, dB re the strike's power in all bands. */
    static double[][] of(Decays decays, TapSettings settings, int bandsPerOctave) {
        int bands = (int) Math.max(
                FEWEST_BANDS,
                Math.round(bandsPerOctave * Math.log(settings.highHz() / settings.lowHz()) / Math.log(2)));
        Fourier fourier = new Fourier(decays.length());
        double[][] bandDb = new double[decays.count()][];
        for (int s = 0; s < bandDb.length; s++) {
            bandDb[s] = bandLevels(fourier.power(decays.decay(s)), decays, settings, bands);
        }
        return bandDb;
    }

    private static double[] bandLevels(double[] bins, Decays decays, TapSettings settings, int bands) {
        double[] power = new double[bands];
        double binHz = decays.rateHz() / decays.length();
        double span = Math.log(settings.highHz() / settings.lowHz());
        for (int k = 0; k < bins.length; k++) {
            int band = (int) Math.floor(bands * Math.log(k * binHz / settings.lowHz()) / span);
            if (k > 0 && band >= 0 && band < bands) {
                power[band] += bins[k];
            }
        }
        double total = Arrays.stream(power).sum();
        double[] db = new double[bands];
        for (int b = 0; b < bands; b++) {
            db[b] = 10 * Math.log10(Math.max(1e-12, power[b] / Math.max(1e-300, total)));
        }
        return db;
    }
}
