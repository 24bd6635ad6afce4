package io.github.tapwright.tap;

import io.github.tapwright.signal.Fourier;

/** Mean power of a stretch of signal inside a band, under a Hann window so that hum outside stays outside. */
final class BandPower {

    private final Fourier fourier;
    private final double[] window;
    private final int firstBin;
    private final int lastBin;
    private final double scale;

    BandPower(int length, double rateHz, double lowHz, double highHz) {
        fourier = new Fourier(length);
        window = new double[length];
        double sum = 0;
        for (int n = 0; n < length; n++) {
            window[n] = 0.5 - 0.5 * Math.cos(2 * Math.PI * n / length);
            sum += window[n] * window[n];
        }
        scale = 2 / (length * sum);
        firstBin = (int) Math.ceil(lowHz * length / rateHz);
        lastBin = (int) Math.min(length / 2.0, Math.floor(highHz * length / rateHz));
    }

    /** Mean square in the band of {@code length} samples from {@code from}; silence outside the signal. */
    double at(double[] signal, int from) {
        double[] part = new double[window.length];
        for (int n = 0; n < part.length; n++) {
            int m = from + n;
            part[n] = m >= 0 && m < signal.length ? signal[m] * window[n] : 0;
        }
        double[] power = fourier.power(part);
        double sum = 0;
        for (int k = firstBin; k <= lastBin; k++) {
            sum += power[k];
        }
        return sum * scale;
    }
}
