package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.List;

/**
 * A pole with its strength in every strike: x[n] = cosine·Re(zⁿ) + sine·Im(zⁿ).
 *
 * @param pole frequency and decay, the same in all strikes
 * @param amplitudes cosine and sine strengths in turn, shape [2·strikes]
 */
record SharedMode(Pole pole, List<Double> amplitudes) {

    SharedMode {
        amplitudes = List.copyOf(amplitudes);
    }

    double cosine(int strike) {
        return amplitudes.get(2 * strike);
    }

    double sine(int strike) {
        return amplitudes.get(2 * strike + 1);
    }

    int strikes() {
        return amplitudes.size() / 2;
    }

    /** The same mode seen from a later start: its strengths turned and decayed. */
    SharedMode later(double seconds) {
        double decay = Math.exp(-pole.sigma() * seconds);
        double re = decay * Math.cos(pole.omega() * seconds);
        double im = decay * Math.sin(pole.omega() * seconds);
        List<Double> turned = new ArrayList<>();
        for (int s = 0; s < strikes(); s++) {
            turned.add(cosine(s) * re + sine(s) * im);
            turned.add(sine(s) * re - cosine(s) * im);
        }
        return new SharedMode(pole, turned);
    }

    /** Height of its line in one strike's spectrum, up to a constant: strength over decay rate, dB. */
    double heightDb(int strike) {
        return 20 * Math.log10(Math.max(1e-30, Math.hypot(cosine(strike), sine(strike)) / pole.sigma()));
    }

    /** Mean of {@link #heightDb} over the strikes. */
    double meanHeightDb() {
        double sum = 0;
        for (int s = 0; s < strikes(); s++) {
            sum += heightDb(s);
        }
        return sum / strikes();
    }
}
