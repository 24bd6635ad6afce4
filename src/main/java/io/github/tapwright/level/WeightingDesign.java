package io.github.tapwright.level;

import io.github.tapwright.signal.SecondOrderSection;
import java.util.List;

/**
 * Digital filters for the weightings at any sample rate.
 *
 * <p>The high passes are bilinear, each pole prewarped to its own frequency. The double pole at 12.2 kHz would
 * come out up to 8 dB wrong that way at 44.1 kHz, so there the poles are matched (z = exp(−2π·f4/rate), twice)
 * and the two zeros placed so that the power is exact at 0 Hz and at two frequencies near the top: in
 * φ = sin²(ω/2) the power of the zeros is 1 + c1·φ + c2·φ², linear in its unknowns. Source of the weightings:
 * [IEC61672-1]; the design is ours.
 */
final class WeightingDesign {

    private static final double REFERENCE_HZ = 1000;
    private static final double OFFSET_STOP_HZ = 5;
    private static final double LOWEST_RATE_HZ = 2 * REFERENCE_HZ;

    private WeightingDesign() {}

    static List<SecondOrderSection> weightingA(double rateHz) {
        return normalised(
                rateHz,
                highPasses(WeightingPoles.F1_HZ, WeightingPoles.F1_HZ, rateHz),
                highPasses(WeightingPoles.F2_HZ, WeightingPoles.F3_HZ, rateHz),
                topPoles(rateHz));
    }

    static List<SecondOrderSection> weightingC(double rateHz) {
        return normalised(rateHz, highPasses(WeightingPoles.F1_HZ, WeightingPoles.F1_HZ, rateHz), topPoles(rateHz));
    }

    /** Second-order Butterworth high pass, bilinear. */
    static List<SecondOrderSection> weightingZ(double rateHz) {
        double t = Math.tan(Math.PI * OFFSET_STOP_HZ / rateHz);
        double a0 = 1 + Math.sqrt(2) * t + t * t;
        return normalised(
                rateHz, new SecondOrderSection(1, -2, 1, 2 * (t * t - 1) / a0, (1 - Math.sqrt(2) * t + t * t) / a0));
    }

    private static SecondOrderSection highPasses(double firstHz, double secondHz, double rateHz) {
        return SecondOrderSection.ofRealRoots(
                new double[] {1, 1}, new double[] {warpedPole(firstHz, rateHz), warpedPole(secondHz, rateHz)});
    }

    private static double warpedPole(double frequencyHz, double rateHz) {
        double t = Math.tan(Math.PI * frequencyHz / rateHz);
        return (1 - t) / (1 + t);
    }

    private static SecondOrderSection topPoles(double rateHz) {
        double pole = Math.exp(-2 * Math.PI * WeightingPoles.F4_HZ / rateHz);
        double nyquistHz = rateHz / 2;
        double[] c = zerosPower(Math.min(0.6 * nyquistHz, 13_200), Math.min(0.9 * nyquistHz, 20_000), rateHz);
        double spread = Math.sqrt(c[0] * c[0] - 4 * c[1]);
        double[] zeros = {zeroOf((-c[0] + spread) / (2 * c[1])), zeroOf((-c[0] - spread) / (2 * c[1]))};
        return SecondOrderSection.ofRealRoots(zeros, new double[] {pole, pole});
    }

    /** The c1 and c2 that make the power exact at two frequencies. */
    private static double[] zerosPower(double firstHz, double secondHz, double rateHz) {
        double p = phi(firstHz, rateHz);
        double q = phi(secondHz, rateHz);
        double atP = (wantedZerosPower(firstHz, rateHz) - 1) / p;
        double atQ = (wantedZerosPower(secondHz, rateHz) - 1) / q;
        double c2 = (atQ - atP) / (q - p);
        return new double[] {atP - c2 * p, c2};
    }

    /** What the zeros must contribute: the analogue double pole over the digital one, both 1 at 0 Hz. */
    private static double wantedZerosPower(double frequencyHz, double rateHz) {
        double analogue = 1 + Math.pow(frequencyHz / WeightingPoles.F4_HZ, 2);
        double digital = 1 + phi(frequencyHz, rateHz) / Math.pow(Math.sinh(Math.PI * WeightingPoles.F4_HZ / rateHz), 2);
        return Math.pow(digital / analogue, 2);
    }

    private static double phi(double frequencyHz, double rateHz) {
        return Math.pow(Math.sin(Math.PI * frequencyHz / rateHz), 2);
    }

    /** The zero inside the unit circle whose power vanishes at {@code phi}: z + 1/z = 2 − 4φ. */
    private static double zeroOf(double phi) {
        double half = 1 - 2 * phi;
        return half - Math.signum(half) * Math.sqrt(half * half - 1);
    }

    private static List<SecondOrderSection> normalised(double rateHz, SecondOrderSection... sections) {
        if (rateHz <= LOWEST_RATE_HZ) {
            throw new IllegalArgumentException("weightings are set at 1 kHz, which a rate of " + rateHz
                    + " Hz does not hold; use a recording of 8000 Hz or more");
        }
        double power = 1;
        for (SecondOrderSection section : sections) {
            power *= section.powerGain(REFERENCE_HZ, rateHz);
        }
        SecondOrderSection[] scaled = sections.clone();
        scaled[0] = sections[0].times(1 / Math.sqrt(power));
        return List.of(scaled);
    }
}
