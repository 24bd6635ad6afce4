package io.github.tapwright.level;

import io.github.tapwright.statistics.Median;

/**
 * The longest stretch of a recording over which the level stays at its usual value.
 *
 * @param first first sample
 * @param length number of samples, a multiple of the segment's; 0 if there is none
 * @param segment samples in 0.1 s
 */
record SteadyPart(int first, int length, int segment) {

    private static final double SEGMENT_SECONDS = 0.1;
    private static final double TOLERANCE_DB = 0.5;

    static SteadyPart of(double[] samples, double rateHz) {
        int segment = (int) Math.round(SEGMENT_SECONDS * rateHz);
        double[] power = new double[samples.length / segment];
        for (int s = 0; s < power.length; s++) {
            for (int n = s * segment; n < (s + 1) * segment; n++) {
                power[s] += samples[n] * samples[n];
            }
        }
        double usual = power.length == 0 ? 0 : Median.of(power);
        int best = 0;
        int bestEnd = 0;
        int run = 0;
        for (int s = 0; s < power.length; s++) {
            run = Math.abs(10 * Math.log10(power[s] / usual)) <= TOLERANCE_DB ? run + 1 : 0;
            if (run > best) {
                best = run;
                bestEnd = s + 1;
            }
        }
        return new SteadyPart((bestEnd - best) * segment, best * segment, segment);
    }
}
