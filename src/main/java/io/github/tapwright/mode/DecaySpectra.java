package io.github.tapwright.mode;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.tap.Decays;
import java.util.Arrays;
import java.util.List;

/** The spectra of all decays over their common length, rectangle window, unscaled. */
final class DecaySpectra {

    private final Decays decays;
    private final double[][] spectra;

    DecaySpectra(Decays decays) {
        this.decays = decays;
        this.spectra = new double[decays.count()][];
        Fourier fourier = new Fourier(decays.length());
        for (int s = 0; s < spectra.length; s++) {
            spectra[s] = fourier.forward(decays.decay(s));
        }
    }

    /**
     * The spectra of the same decays, their beginning left out.
     *
     * @param seconds how much is left out, to the nearest two samples, so that an even length stays even
     */
    DecaySpectra later(double seconds) {
        int skip = 2 * (int) Math.round(seconds * rateHz() / 2);
        double[][] rest = new double[strikes()][];
        for (int s = 0; s < rest.length; s++) {
            rest[s] = Arrays.copyOfRange(decays.decay(s), skip, length());
        }
        return new DecaySpectra(new Decays(rateHz(), rest, decays.humHz()));
    }

    int strikes() {
        return spectra.length;
    }

    int length() {
        return decays.length();
    }

    double rateHz() {
        return decays.rateHz();
    }

    double seconds() {
        return decays.seconds();
    }

    List<Double> humHz() {
        return decays.humHz();
    }

    double binHz() {
        return decays.rateHz() / decays.length();
    }

    /** The bin nearest to a frequency, kept off zero and off half the rate. */
    int bin(double hz) {
        return (int) Math.max(1, Math.min(Math.round(hz / binHz()), decays.length() / 2 - 1));
    }

    /** A fresh copy of a run of bins, shape [strikes][2·bins]: real parts, then imaginary parts. */
    double[][] rows(int first, int bins) {
        double[][] rows = new double[spectra.length][2 * bins];
        for (int s = 0; s < spectra.length; s++) {
            for (int i = 0; i < bins; i++) {
                rows[s][i] = spectra[s][2 * (first + i)];
                rows[s][bins + i] = spectra[s][2 * (first + i) + 1];
            }
        }
        return rows;
    }

    /** One strike's spectrum, interleaved; shared inside the package, nobody changes it. */
    double[] spectrum(int strike) {
        return spectra[strike];
    }
}
