package io.github.tapwright.level;

import java.util.List;

/**
 * Weightings and class 1 limits. Source: [IEC61672-1], table 3; the unrounded values are computed from its annex E.
 *
 * @param index n of the exact frequency 1000·10^(n/10) Hz
 * @param roundedA weighting A as printed, dB
 * @param roundedC weighting C as printed, dB
 * @param above how much more is allowed, dB
 * @param below how much less is allowed, dB
 * @param exactA weighting A unrounded, dB
 * @param exactC weighting C unrounded, dB
 */
record WeightingTable(
        int index, double roundedA, double roundedC, double above, double below, double exactA, double exactC) {

    private static final double ANY = Double.POSITIVE_INFINITY;

    double frequencyHz() {
        return 1000 * Math.pow(10, index / 10.0);
    }

    static final List<WeightingTable> ROWS = List.of(
            new WeightingTable(-20, -70.4, -14.3, 3.0, ANY, -70.430, -14.330),
            new WeightingTable(-19, -63.4, -11.2, 2.5, ANY, -63.371, -11.249),
            new WeightingTable(-18, -56.7, -8.5, 2.0, 4.0, -56.688, -8.531),
            new WeightingTable(-17, -50.5, -6.2, 2.0, 2.0, -50.452, -6.240),
            new WeightingTable(-16, -44.7, -4.4, 2.0, 1.5, -44.703, -4.405),
            new WeightingTable(-15, -39.4, -3.0, 1.5, 1.5, -39.440, -3.010),
            new WeightingTable(-14, -34.6, -2.0, 1.0, 1.0, -34.630, -1.999),
            new WeightingTable(-13, -30.2, -1.3, 1.0, 1.0, -30.228, -1.294),
            new WeightingTable(-12, -26.2, -0.8, 1.0, 1.0, -26.194, -0.818),
            new WeightingTable(-11, -22.5, -0.5, 1.0, 1.0, -22.504, -0.504),
            new WeightingTable(-10, -19.1, -0.3, 1.0, 1.0, -19.143, -0.300),
            new WeightingTable(-9, -16.1, -0.2, 1.0, 1.0, -16.098, -0.169),
            new WeightingTable(-8, -13.4, -0.1, 1.0, 1.0, -13.350, -0.085),
            new WeightingTable(-7, -10.9, 0, 1.0, 1.0, -10.870, -0.033),
            new WeightingTable(-6, -8.6, 0, 1.0, 1.0, -8.630, 0.000),
            new WeightingTable(-5, -6.6, 0, 1.0, 1.0, -6.611, 0.019),
            new WeightingTable(-4, -4.8, 0, 1.0, 1.0, -4.808, 0.029),
            new WeightingTable(-3, -3.2, 0, 1.0, 1.0, -3.233, 0.033),
            new WeightingTable(-2, -1.9, 0, 1.0, 1.0, -1.900, 0.029),
            new WeightingTable(-1, -0.8, 0, 1.0, 1.0, -0.824, 0.019),
            new WeightingTable(0, 0, 0, 0.7, 0.7, 0, 0),
            new WeightingTable(1, 0.6, 0, 1.0, 1.0, 0.591, -0.033),
            new WeightingTable(2, 1.0, -0.1, 1.0, 1.0, 0.981, -0.085),
            new WeightingTable(3, 1.2, -0.2, 1.0, 1.0, 1.200, -0.169),
            new WeightingTable(4, 1.3, -0.3, 1.0, 1.0, 1.271, -0.300),
            new WeightingTable(5, 1.2, -0.5, 1.0, 1.0, 1.199, -0.504),
            new WeightingTable(6, 1.0, -0.8, 1.0, 1.0, 0.970, -0.818),
            new WeightingTable(7, 0.5, -1.3, 1.5, 1.5, 0.549, -1.294),
            new WeightingTable(8, -0.1, -2.0, 1.5, 2.0, -0.121, -1.999),
            new WeightingTable(9, -1.1, -3.0, 1.5, 2.5, -1.111, -3.010),
            new WeightingTable(10, -2.5, -4.4, 2.0, 3.0, -2.492, -4.405),
            new WeightingTable(11, -4.3, -6.2, 2.0, 5.0, -4.318, -6.240),
            new WeightingTable(12, -6.6, -8.5, 2.5, 16.0, -6.603, -8.531),
            new WeightingTable(13, -9.3, -11.2, 3.0, ANY, -9.317, -11.249));
}
