package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick transform is the sum its formula says, for lengths of every kind. */
class FourierTest {

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 9, 16, 30, 45, 97, 100, 194})
    void isTheSumOfItsFormula(int length) {
        double[] signal = new Random(length).doubles(length, -1, 1).toArray();
        double[] half = new Fourier(length).forward(signal);
        assertThat(half).hasSize(2 * (length / 2 + 1));
        for (int k = 0; k <= length / 2; k++) {
            double re = 0;
            double im = 0;
            for (int n = 0; n < length; n++) {
                double angle = -2 * Math.PI * k * n / length;
                re += signal[n] * Math.cos(angle);
                im += signal[n] * Math.sin(angle);
            }
            // a direct sum of N terms of size 1 is good to about N roundings
            assertThat(half[2 * k]).isCloseTo(re, within(1e-13 * length));
            assertThat(half[2 * k + 1]).isCloseTo(im, within(1e-13 * length));
        }
    }

    @Test
    void transformsAStretchAsIfItWereAll() {
        double[] signal = new Random(7).doubles(50, -1, 1).toArray();
        assertThat(new Fourier(30).forward(signal, 11))
                .containsExactly(new Fourier(30).forward(Arrays.copyOfRange(signal, 11, 41)));
    }
}
