package io.github.tapwright.signal;

/**
 * A window's line: what a steady tone looks like through it, re its top, at any fraction of a bin.
 *
 * <p>Level and slope between two bins come from the sum W(k) = Σ w[n]·exp(−2πi·k·n/N) itself; the search for the
 * highest side lobe looks at {@value #STEPS} places a bin, which misses the top of a lobe by less than 0.003 dB.
 */
final class WindowSpectrum {

    private static final int STEPS = 64;

    private final double[] samples;
    private final double top;

    WindowSpectrum(double[] samples) {
        this.samples = samples;
        this.top = size(0);
    }

    private double size(double bins) {
        double re = 0;
        double im = 0;
        for (int n = 0; n < samples.length; n++) {
            double angle = 2 * Math.PI * bins * n / samples.length;
            re += samples[n] * Math.cos(angle);
            im -= samples[n] * Math.sin(angle);
        }
        return Math.hypot(re, im);
    }

    /** Amplitude so many bins off a tone, 1 on the tone itself. */
    double relativeAt(double bins) {
        return size(bins) / top;
    }

    /** Full width where the main lobe first falls to a fraction of its top. */
    double widthBins(double fraction) {
        double low = 0;
        while (relativeAt(low + 1.0 / STEPS) > fraction) {
            low += 1.0 / STEPS;
        }
        double high = low + 1.0 / STEPS;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (relativeAt(middle) > fraction) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low + high;
    }

    /** Largest departure from the top's level, up or down, within half a bin. */
    double largestErrorDb() {
        double largest = 0;
        for (int i = 0; i <= STEPS / 2; i++) {
            double errorDb = 20 * Math.log10(relativeAt((double) i / STEPS));
            largest = Math.max(largest, Math.abs(errorDb));
        }
        return largest;
    }

    /** Level of the highest lobe beyond the main one, up to half the sample rate. */
    double highestSidelobeDb() {
        double[] padded = new double[STEPS * samples.length];
        System.arraycopy(samples, 0, padded, 0, samples.length);
        double[] power = new Fourier(padded.length).power(padded);
        // A flat top has ripples on its main lobe, so the way down starts well below them.
        int foot = (int) Math.ceil(widthBins(0.5) / 2 * STEPS);
        while (power[foot + 1] < power[foot]) {
            foot++;
        }
        double highest = 0;
        for (int k = foot; k < power.length; k++) {
            highest = Math.max(highest, power[k]);
        }
        return 10 * Math.log10(highest / (top * top));
    }
}
