package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimatorTest {

    private static final double RATE_HZ = 48_000;
    private static final int LENGTH = 48_000;
    private static final int BLOCK = 1_000;

    private static double[] tone(double hz) {
        return IntStream.range(0, LENGTH)
                .mapToDouble(n -> Math.cos(2 * Math.PI * hz * n / RATE_HZ))
                .toArray();
    }

    private static double[] decimated(double[] signal, int factor, double passEdgeHz) {
        return decimated(signal, factor, passEdgeHz, BLOCK);
    }

    private static double[] decimated(double[] signal, int factor, double passEdgeHz, int block) {
        Decimator decimator = new Decimator(RATE_HZ, factor, passEdgeHz);
        GrowingSignal kept = new GrowingSignal();
        for (int from = 0; from < signal.length; from += block) {
            double[] more = decimator.process(Arrays.copyOfRange(signal, from, from + block), block);
            kept.append(more, more.length);
        }
        double[] last = decimator.finish();
        kept.append(last, last.length);
        return kept.joined();
    }

    /** Blocks of 12 complete fewer outputs than are worked out at once. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5})
    void givesTheSameBitsInBlocksOfAnySize(int factor) {
        double[] in = tone(1234);
        double edgeHz = 0.35 * RATE_HZ / factor;
        assertThat(decimated(in, factor, edgeHz, 12)).containsExactly(decimated(in, factor, edgeHz, 16_000));
    }

    /** Where a tone comes out as it went in, the delay is taken out too. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 8})
    void whatItKeepsStaysAsItIsAndWhereItIs(int factor) {
        double edgeHz = 0.35 * RATE_HZ / factor;
        double[] in = tone(0.99 * edgeHz);
        double[] out = decimated(in, factor, edgeHz);
        assertThat(out).hasSize((LENGTH + factor - 1) / factor);
        for (int m = 1000 / factor; m < out.length - 1000 / factor; m++) {
            // 0.001 dB is 1.15e-4 of the amplitude
            assertThat(out[m]).isCloseTo(in[m * factor], Offset.offset(1.2e-4));
        }
    }

    /** 90 dB down from where an image would fall onto what is kept. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 8})
    void whatWouldFoldOntoItIsGone(int factor) {
        double edgeHz = 0.35 * RATE_HZ / factor;
        double[] out = decimated(tone(RATE_HZ / factor - edgeHz), factor, edgeHz);
        for (int m = 1000 / factor; m < out.length - 1000 / factor; m++) {
            assertThat(Math.abs(out[m])).isLessThan(1.1 * Math.pow(10, -90 / 20.0));
        }
    }

    @Test
    void theSizeOfTheBlocksDoesNotMatter() {
        double[] in = tone(700);
        Decimator whole = new Decimator(RATE_HZ, 3, 5000);
        double[] first = whole.process(in, 30_000);
        double[] pieces = decimated(in, 3, 5000);
        for (int m = 0; m < first.length; m++) {
            assertThat(first[m]).isEqualTo(pieces[m]);
        }
    }
}
