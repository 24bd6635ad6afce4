package io.github.tapwright.level.loudness;

import io.github.tapwright.signal.SectionFilter;

/**
 * The smoothed intensity of one third-octave band, every 0.5 ms, and its mean over the whole sound.
 *
 * <p>Band filter, square, three first-order low passes of τ = 2/(3·f_m), f_m at most 1 kHz, then every 24th
 * sample. Source: [ISO532-1], annex A.
 */
final class BandEnvelope {

    /** Samples of 48 kHz in 0.5 ms. */
    static final int SAMPLES_PER_FRAME = 24;

    private static final double FASTEST_HZ = 1000;

    private final SectionFilter filter;
    private final double share;
    private double first;
    private double second;
    private double third;
    private double energy;

    BandEnvelope(int band) {
        this.filter = new SectionFilter(FilterTable.sections(band));
        double tau = 2 / (3 * Math.min(FilterTable.midHz(band), FASTEST_HZ));
        this.share = -Math.expm1(-1 / (FilterTable.RATE_HZ * tau));
    }

    /**
     * Takes samples, pascals at 48 kHz, and overwrites them; {@code frames} gets the intensity, Pa², at every
     * 24th of them, the first included.
     */
    void process(double[] samples, int count, double[] frames) {
        filter.process(samples, count);
        double once = first;
        double twice = second;
        double thrice = third;
        double sum = 0;
        for (int start = 0; start < count; start += SAMPLES_PER_FRAME) {
            int end = Math.min(count, start + SAMPLES_PER_FRAME);
            for (int n = start; n < end; n++) {
                double square = samples[n] * samples[n];
                sum += square;
                once += share * (square - once);
                twice += share * (once - twice);
                thrice += share * (twice - thrice);
                if (n == start) {
                    frames[start / SAMPLES_PER_FRAME] = thrice;
                }
            }
        }
        first = once;
        second = twice;
        third = thrice;
        energy += sum;
    }

    /** Sum of the squares of all filtered samples, Pa². */
    double energy() {
        return energy;
    }
}
