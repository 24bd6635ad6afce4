package io.github.tapwright.level;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.signal.Window;

/**
 * The frequency of the strongest tone in a signal, good to some thousandths of a hertz for a second of sound.
 *
 * <p>Hann window, largest bin k, r the magnitude of its larger neighbour over its own: f = (k ± (2r − 1)/(1 + r))
 * times the bin width, exact for a pure tone far from 0 Hz. Source: [Grandke1983].
 */
final class ToneFrequency {

    private ToneFrequency() {}

    static double hertz(double[] samples, int first, int length, double rateHz) {
        double[] windowed = Window.HANN.periodic(length);
        for (int n = 0; n < length; n++) {
            windowed[n] *= samples[first + n];
        }
        double[] power = new Fourier(length).power(windowed);
        int top = 2; // below lies the window's image of a constant offset
        for (int k = top; k < power.length - 1; k++) {
            if (power[k] > power[top]) {
                top = k;
            }
        }
        int side = power[top + 1] > power[top - 1] ? 1 : -1;
        double ratio = Math.sqrt(power[top + side] / power[top]);
        double offset = side * (2 * ratio - 1) / (1 + ratio);
        return (top + offset) * rateHz / length;
    }
}
