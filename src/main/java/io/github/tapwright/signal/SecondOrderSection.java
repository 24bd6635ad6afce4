package io.github.tapwright.signal;

/**
 * One second-order section of a recursive filter.
 *
 * <p>H(z) = (b0 + b1·z⁻¹ + b2·z⁻²) / (1 + a1·z⁻¹ + a2·z⁻²). Source: [OppenheimSchafer2010], sec. 6.3.
 *
 * @param b0 weight of the present input
 * @param b1 weight of the last input
 * @param b2 weight of the input before it
 * @param a1 weight of the last output, on the left of the difference equation
 * @param a2 weight of the output before it
 */
public record SecondOrderSection(double b0, double b1, double b2, double a1, double a2) {

    /** Refuses a section that would ring for ever: both poles must lie inside the unit circle. */
    public SecondOrderSection {
        if (!(Math.abs(a2) < 1) || !(Math.abs(a1) < 1 + a2)) {
            throw new IllegalArgumentException("the poles of a section must lie inside the unit circle");
        }
    }

    /**
     * A section from its two zeros and two poles, all real.
     *
     * @param zeros the zeros in the z plane, two of them
     * @param poles the poles in the z plane, two of them, inside the unit circle
     * @return the section with b0 = 1
     */
    public static SecondOrderSection ofRealRoots(double[] zeros, double[] poles) {
        return new SecondOrderSection(
                1, -zeros[0] - zeros[1], zeros[0] * zeros[1], -poles[0] - poles[1], poles[0] * poles[1]);
    }

    /**
     * The same section, louder or softer.
     *
     * @param gain factor on the amplitude
     * @return the scaled section
     */
    public SecondOrderSection times(double gain) {
        return new SecondOrderSection(gain * b0, gain * b1, gain * b2, a1, a2);
    }

    /**
     * What the section does to the power of a sine: |H(exp(iω))|².
     *
     * @param frequencyHz from 0 to half the rate
     * @param rateHz sample rate
     * @return factor on the power
     */
    public double powerGain(double frequencyHz, double rateHz) {
        double phi = Math.sin(Math.PI * frequencyHz / rateHz);
        return quadratic(b0, b1, b2, phi * phi) / quadratic(1, a1, a2, phi * phi);
    }

    /** |c0 + c1·z⁻¹ + c2·z⁻²|² on the unit circle, in φ = sin²(ω/2), which keeps its digits at low ω. */
    private static double quadratic(double c0, double c1, double c2, double phi) {
        double sum = c0 + c1 + c2;
        return sum * sum - 4 * phi * (c1 * (c0 + c2) + 4 * c0 * c2) + 16 * phi * phi * c0 * c2;
    }
}
