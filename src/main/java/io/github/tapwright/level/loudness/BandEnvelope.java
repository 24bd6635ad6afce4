package io.github.tapwright.level.loudness;

/**
 * The smoothed intensity of one third-octave band, every 0.5 ms, and its mean over the whole sound.
 *
 * <p>Band filter, square, three first-order low passes of τ = 2/(3·f_m), f_m at most 1 kHz, then every 24th
 * sample. The zeros of the band filter are those of {@link SharedZeros}, so only its poles are left to run here:
 * y[n] = g·x[n] − a1·y[n − 1] − a2·y[n − 2], three times over. All of it goes in one loop, because each recursion
 * waits for its own last value and the processor can work on the others meanwhile. Source: [ISO532-1], annex A.
 */
final class BandEnvelope {

    /** Samples of 48 kHz in 0.5 ms. */
    static final int SAMPLES_PER_FRAME = 24;

    private static final double FASTEST_HZ = 1000;
    private static final int SECTIONS = 3;

    private final double gain;
    private final double[] a1 = new double[SECTIONS];
    private final double[] a2 = new double[SECTIONS];
    private final double[] last = new double[SECTIONS];
    private final double[] beforeLast = new double[SECTIONS];
    private final double[] smoothed = new double[SECTIONS];
    private final double kept;
    private double energy;

    BandEnvelope(int band) {
        this.gain = FilterTable.gain(band);
        for (int s = 0; s < SECTIONS; s++) {
            a1[s] = FilterTable.a1(band, s);
            a2[s] = FilterTable.a2(band, s);
        }
        double tau = 2 / (3 * Math.min(FilterTable.midHz(band), FASTEST_HZ));
        this.kept = Math.exp(-1 / (FilterTable.RATE_HZ * tau));
    }

    /**
     * Takes samples, pascals at 48 kHz after the shared zeros; {@code frames} gets the intensity, Pa², at every
     * 24th of them, the first included.
     */
    void process(double[] samples, int count, double[] frames) {
        double y1 = last[0];
        double y2 = beforeLast[0];
        double z1 = last[1];
        double z2 = beforeLast[1];
        double w1 = last[2];
        double w2 = beforeLast[2];
        double once = smoothed[0];
        double twice = smoothed[1];
        double thrice = smoothed[2];
        double ya1 = a1[0];
        double ya2 = a2[0];
        double za1 = a1[1];
        double za2 = a2[1];
        double wa1 = a1[2];
        double wa2 = a2[2];
        double share = 1 - kept;
        double sum = 0;
        int toFrame = 0;
        for (int n = 0; n < count; n++) {
            double y = gain * samples[n] - ya2 * y2 - ya1 * y1;
            y2 = y1;
            y1 = y;
            double z = y - za2 * z2 - za1 * z1;
            z2 = z1;
            z1 = z;
            double w = z - wa2 * w2 - wa1 * w1;
            w2 = w1;
            w1 = w;
            double square = w * w;
            sum += square;
            once = kept * once + share * square;
            twice = kept * twice + share * once;
            thrice = kept * thrice + share * twice;
            if (toFrame-- == 0) {
                frames[n / SAMPLES_PER_FRAME] = thrice;
                toFrame = SAMPLES_PER_FRAME - 1;
            }
        }
        keep(last, y1, z1, w1);
        keep(beforeLast, y2, z2, w2);
        keep(smoothed, once, twice, thrice);
        energy += sum;
    }

    /** Sum of the squares of all filtered samples, Pa². */
    double energy() {
        return energy;
    }

    private static void keep(double[] state, double first, double second, double third) {
        state[0] = first;
        state[1] = second;
        state[2] = third;
    }
}
