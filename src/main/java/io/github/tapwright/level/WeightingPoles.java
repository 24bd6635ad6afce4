package io.github.tapwright.level;

/**
 * The pole frequencies of the weightings A and C, unrounded.
 *
 * <p>C falls by 3 dB at f_L = 10^1.5 Hz and f_H = 10^3.9 Hz against 1 kHz, by a double pole at each end; that
 * fixes f1 and f4. A adds two high passes at (3 ∓ √5)/2 · 10^2.45 Hz. Source: [IEC61672-1], annex E.
 */
final class WeightingPoles {

    private static final double REFERENCE_HZ = 1000;
    private static final double LOW_HZ = Math.pow(10, 1.5);
    private static final double HIGH_HZ = Math.pow(10, 3.9);
    private static final double A_HZ = Math.pow(10, 2.45);

    /** About 20.60 Hz. */
    static final double F1_HZ = Math.sqrt(squareOfPole(-1));
    /** About 107.7 Hz. */
    static final double F2_HZ = (3 - Math.sqrt(5)) / 2 * A_HZ;
    /** About 737.9 Hz. */
    static final double F3_HZ = (3 + Math.sqrt(5)) / 2 * A_HZ;
    /** About 12,194 Hz. */
    static final double F4_HZ = Math.sqrt(squareOfPole(1));

    private WeightingPoles() {}

    private static double squareOfPole(int sign) {
        double d = Math.sqrt(0.5);
        double r2 = REFERENCE_HZ * REFERENCE_HZ;
        double c = LOW_HZ * LOW_HZ * HIGH_HZ * HIGH_HZ;
        double b = (r2 + c / r2 - d * (LOW_HZ * LOW_HZ + HIGH_HZ * HIGH_HZ)) / (1 - d);
        return (-b + sign * Math.sqrt(b * b - 4 * c)) / 2;
    }
}
