package io.github.tapwright.synthesis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class HalfSineContactTest {

    private static final HalfSineContact CONTACT = new HalfSineContact(0.0017);
    private static final Complex POLE = TrueMode.resonator(231, 17, 1).pole();

    @Test
    void carriesUnitImpulse() {
        double sum = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            sum += CONTACT.force((i + 0.5) * 0.0017 / steps) * 0.0017 / steps;
        }
        assertThat(sum).isCloseTo(1, within(1e-8));
    }

    @Test
    void answersAsTheConvolutionDoes() {
        for (double t : new double[] {0.0004, 0.0011, 0.0017, 0.004, 0.03}) {
            Complex exact = CONTACT.response(POLE, t);
            assertThat(exact.subtract(convolved(t)).norm()).isLessThan(1e-7);
        }
    }

    /** Midpoint rule with 50,000 steps, error of order 1e-9. */
    private static Complex convolved(double t) {
        double end = Math.min(t, 0.0017);
        int steps = 50_000;
        Complex sum = Complex.ZERO;
        for (int i = 0; i < steps; i++) {
            double tau = (i + 0.5) * end / steps;
            sum = sum.add(POLE.multiply(t - tau).exp().multiply(CONTACT.force(tau) * end / steps));
        }
        return sum;
    }
}
