package io.github.tapwright.level.broadcast;

import io.github.tapwright.signal.SecondOrderSection;
import java.util.List;

/**
 * The K weighting at any sample rate.
 *
 * <p>[BS1770] prints the two sections for 48 kHz alone. They are the bilinear images of an analogue high shelf
 * (f0 = 1682 Hz, +4 dB) and a high pass (f0 = 38.1 Hz, Q = 0.5); the constants below give the printed
 * coefficients back to 1e-11. At other rates the same prototypes are used, the high pass with the gain it has
 * at 48 kHz (its numerator is printed as 1, −2, 1, not normalised).
 */
final class KWeighting {

    private static final double PRINTED_RATE_HZ = 48_000;
    private static final double SHELF_HZ = 1681.974450955533;
    private static final double SHELF_Q = 0.7071752369554196;
    private static final double SHELF_GAIN = Math.pow(10, 3.999843853973347 / 20);
    private static final double SHELF_MIDDLE_EXPONENT = 0.4996667741545416;
    private static final double HIGH_PASS_HZ = 38.13547087602444;
    private static final double HIGH_PASS_Q = 0.5003270373238773;

    private KWeighting() {}

    static List<SecondOrderSection> sections(double rateHz) {
        if (rateHz <= 4 * SHELF_HZ) {
            throw new IllegalArgumentException("programme loudness needs a sample rate of 8000 Hz or more");
        }
        return List.of(shelf(rateHz), highPass(rateHz));
    }

    private static SecondOrderSection shelf(double rateHz) {
        double k = Math.tan(Math.PI * SHELF_HZ / rateHz);
        double middle = Math.pow(SHELF_GAIN, SHELF_MIDDLE_EXPONENT) * k / SHELF_Q;
        double a0 = 1 + k / SHELF_Q + k * k;
        return new SecondOrderSection(
                (SHELF_GAIN + middle + k * k) / a0,
                2 * (k * k - SHELF_GAIN) / a0,
                (SHELF_GAIN - middle + k * k) / a0,
                2 * (k * k - 1) / a0,
                (1 - k / SHELF_Q + k * k) / a0);
    }

    private static SecondOrderSection highPass(double rateHz) {
        double k = Math.tan(Math.PI * HIGH_PASS_HZ / rateHz);
        double a0 = highPassA0(rateHz);
        double gain = highPassA0(PRINTED_RATE_HZ) / a0;
        return new SecondOrderSection(gain, -2 * gain, gain, 2 * (k * k - 1) / a0, (1 - k / HIGH_PASS_Q + k * k) / a0);
    }

    private static double highPassA0(double rateHz) {
        double k = Math.tan(Math.PI * HIGH_PASS_HZ / rateHz);
        return 1 + k / HIGH_PASS_Q + k * k;
    }
}
