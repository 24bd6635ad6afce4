package io.github.tapwright.level;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.SecondOrderSection;
import java.util.List;

/**
 * The frequency weightings A, C and Z of sound level meters.
 *
 * <p>A(f) = 20 lg(f4²·f⁴ / ((f²+f1²)·√(f²+f2²)·√(f²+f3²)·(f²+f4²))) − A1000,
 * C(f) = 20 lg(f4²·f² / ((f²+f1²)·(f²+f4²))) − C1000, Z(f) = 0; f1 … f4 unrounded from the constants that
 * define them. Source: [IEC61672-1], annex E.
 */
public enum FrequencyWeighting {
    /** Weighting A: roughly the ear at low levels. */
    A,
    /** Weighting C: flat in the middle, falling below 31.5 Hz and above 8 kHz. */
    C,
    /** Weighting Z: zero, that is none. */
    Z;

    private static final double REFERENCE_HZ = 1000;

    /**
     * The weighting the standard asks for.
     *
     * @param frequencyHz above 0
     * @return dB, 0 at 1 kHz
     */
    public double decibels(double frequencyHz) {
        return 10 * Math.log10(relativePower(frequencyHz) / relativePower(REFERENCE_HZ));
    }

    /**
     * A digital filter that does what the weighting asks, on signals of the given rate.
     *
     * <p>Class 1 limits of [IEC61672-1] table 3 hold up to 20 kHz or 0.9 of half the rate, whichever is lower;
     * sound above half the rate is not in the recording and cannot be weighted. Z shuts out a constant offset
     * by a second-order high pass at 5 Hz (−0.26 dB at 10 Hz, −0.02 dB at 20 Hz), which the limits allow.
     *
     * @param rate sample rate, at least 2,000 Hz
     * @return sections, 0 dB at 1 kHz
     */
    public List<SecondOrderSection> sections(SampleRate rate) {
        return switch (this) {
            case A -> WeightingDesign.weightingA(rate.hertz());
            case C -> WeightingDesign.weightingC(rate.hertz());
            case Z -> WeightingDesign.weightingZ(rate.hertz());
        };
    }

    private double relativePower(double frequencyHz) {
        double f2 = frequencyHz * frequencyHz;
        double c = square(WeightingPoles.F4_HZ * WeightingPoles.F4_HZ * f2)
                / square((f2 + square(WeightingPoles.F1_HZ)) * (f2 + square(WeightingPoles.F4_HZ)));
        return switch (this) {
            case A -> c * f2 * f2 / ((f2 + square(WeightingPoles.F2_HZ)) * (f2 + square(WeightingPoles.F3_HZ)));
            case C -> c;
            case Z -> 1;
        };
    }

    private static double square(double x) {
        return x * x;
    }
}
