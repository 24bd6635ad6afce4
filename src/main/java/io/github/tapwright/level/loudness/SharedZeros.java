package io.github.tapwright.level.loudness;

/**
 * The zeros that all 28 third-octave filters have in common, so they run once.
 *
 * <p>The numerators of the three sections, 1 + 2z⁻¹ + z⁻², 1 − z⁻² and 1 − 2z⁻¹ + z⁻², multiply to (1 − z⁻²)³:
 * y[n] = x[n] − 3·x[n − 2] + 3·x[n − 4] − x[n − 6]. What rounding this leaves, of the order of 1e-16 of the sound,
 * comes out of the narrowest filter 180 dB below it. Source: [ISO532-1], table A.1.
 */
final class SharedZeros {

    private static final int MEMORY = 6;

    private final double[] signal;

    /** At rest, for up to {@code mostSamples} at a time. */
    SharedZeros(int mostSamples) {
        this.signal = new double[MEMORY + mostSamples];
    }

    /** Filters the next samples where they lie. */
    void process(double[] samples, int count) {
        System.arraycopy(samples, 0, signal, MEMORY, count);
        for (int n = 0; n < count; n++) {
            samples[n] = signal[n + 6] - signal[n] + 3 * (signal[n + 2] - signal[n + 4]);
        }
        System.arraycopy(signal, count, signal, 0, MEMORY);
    }
}
