package io.github.tapwright.signal;

import org.jtransforms.fft.DoubleFFT_1D;

/**
 * Discrete Fourier transform of real signals of any length, unscaled.
 *
 * <p>X[k] = Σ x[n]·exp(−2πi·k·n/N), k = 0 … N/2. Source: [OppenheimSchafer2010], ch. 8.
 */
public final class Fourier {

    private final int length;
    private final DoubleFFT_1D transform;

    /**
     * Plans a transform.
     *
     * @param length N, at least 2
     */
    public Fourier(int length) {
        if (length < 2) {
            throw new IllegalArgumentException("a transform needs two samples at least, had " + length);
        }
        this.length = length;
        this.transform = new DoubleFFT_1D(length);
    }

    /**
     * The longest length up to {@code n} that transforms quickly: even, without prime factors above 5.
     *
     * @param n at least 2
     * @return between n/2 and n
     */
    public static int quickLength(int n) {
        for (int m = n - n % 2; m > 2; m -= 2) {
            int rest = m;
            for (int prime : new int[] {2, 3, 5}) {
                while (rest % prime == 0) {
                    rest /= prime;
                }
            }
            if (rest == 1) {
                return m;
            }
        }
        return 2;
    }

    /**
     * The spectrum of a real signal.
     *
     * @param signal shape [N]; left unchanged
     * @return real and imaginary parts interleaved, shape [2·(N/2+1)]
     */
    public double[] forward(double[] signal) {
        return forward(signal, 0);
    }

    /**
     * The spectrum of a stretch of a real signal.
     *
     * @param signal shape [from + N] or longer; left unchanged
     * @param from first sample of the stretch
     * @return real and imaginary parts interleaved, shape [2·(N/2+1)]
     */
    public double[] forward(double[] signal, int from) {
        double[] half = new double[2 * (length / 2 + 1)];
        System.arraycopy(signal, from, half, 0, length);
        transform.realForward(half);
        // In the place of X[0]'s imaginary part, which is zero, stands the last number that a real signal's transform
        // has.
        half[length] = half[1];
        half[1] = 0;
        return half;
    }

    /**
     * The power spectrum of a real signal: |X[k]|², unscaled.
     *
     * @param signal shape [N]; left unchanged
     * @return shape [N/2+1]
     */
    public double[] power(double[] signal) {
        double[] spectrum = forward(signal);
        double[] power = new double[spectrum.length / 2];
        for (int k = 0; k < power.length; k++) {
            power[k] = spectrum[2 * k] * spectrum[2 * k] + spectrum[2 * k + 1] * spectrum[2 * k + 1];
        }
        return power;
    }

    /**
     * The real part of the inverse transform of a one-sided spectrum, doubled, so that a real signal whose
     * spectrum is given for positive frequencies alone comes back: 2·Re Σ X[k]·exp(2πi·k·n/N)/N.
     *
     * @param oneSided interleaved complex values, shape [2N], zero where there is no content
     * @return shape [N]
     */
    public double[] realFromOneSided(double[] oneSided) {
        double[] work = oneSided.clone();
        transform.complexInverse(work, true);
        double[] real = new double[length];
        for (int n = 0; n < length; n++) {
            real[n] = 2 * work[2 * n];
        }
        return real;
    }
}
