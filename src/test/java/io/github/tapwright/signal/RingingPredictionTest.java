package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RingingPredictionTest {

    private static final int ORDER = 8;
    private static final double RATE_HZ = 4000;

    @Test
    void aDecayCutAtItsLoudestIsForetoldToItsSmallestPart() {
        double[] decay = decay(1200);
        RingingPrediction ringing = new RingingPrediction(ORDER);
        ringing.accumulate(decay, 0, decay.length);
        double[] products = new double[ORDER + 1];
        LinearPrediction.accumulate(decay, 0, decay.length, products);

        double exact = largestAfterItsPast(ringing.learn().error(decay));

        assertThat(exact).isLessThan(1e-3);
        assertThat(exact)
                .isLessThan(0.1
                        * largestAfterItsPast(LinearPrediction.learn(products).error(decay)));
    }

    @Test
    void stretchesTooShortTeachNothing() {
        RingingPrediction ringing = new RingingPrediction(ORDER);
        ringing.accumulate(decay(ORDER), 0, ORDER);

        assertThat(ringing.isSilent()).isTrue();
        assertThatThrownBy(ringing::learn).isInstanceOf(IllegalStateException.class);
    }

    /** A neck's 66 Hz beside a top's 200 Hz, from the contact on. */
    private static double[] decay(int length) {
        double[] x = new double[length];
        for (int n = 0; n < length; n++) {
            double t = n / RATE_HZ;
            x[n] = Math.exp(-8 * t) * Math.cos(2 * Math.PI * 66 * t)
                    + Math.exp(-22 * t) * Math.cos(2 * Math.PI * 200 * t);
        }
        return x;
    }

    private static double largestAfterItsPast(double[] error) {
        double largest = 0;
        for (int n = ORDER; n < error.length; n++) {
            largest = Math.max(largest, Math.abs(error[n]));
        }
        return largest;
    }
}
