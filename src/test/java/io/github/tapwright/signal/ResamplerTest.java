package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResamplerTest {

    private static double[] sine(double frequencyHz, double rateHz, int length) {
        double[] x = new double[length];
        Arrays.setAll(x, n -> Math.sin(2 * Math.PI * frequencyHz * n / rateHz));
        return x;
    }

    private static double[] resampled(int up, int down, double[] signal, int block) {
        Resampler resampler = new Resampler(up, down);
        DoubleStream out = DoubleStream.empty();
        for (int start = 0; start < signal.length; start += block) {
            int count = Math.min(block, signal.length - start);
            double[] piece = Arrays.copyOfRange(signal, start, start + count);
            out = DoubleStream.concat(out, Arrays.stream(resampler.process(piece, count)));
        }
        return DoubleStream.concat(out, Arrays.stream(resampler.finish())).toArray();
    }

    @ParameterizedTest
    @CsvSource({
        "160, 147, 44100, 997",
        "160, 147, 44100, 17000",
        "1, 2, 96000, 18000",
        "4, 1, 48000, 12000",
        "1, 1, 48000, 5000"
    })
    void aToneComesOutAsTheSameToneAtTheNewRate(int up, int down, double rateHz, double frequencyHz) {
        double[] out = resampled(up, down, sine(frequencyHz, rateHz, 8000), 8000);
        double[] wanted = sine(frequencyHz, rateHz * up / down, out.length);
        assertThat(out).hasSize((8000 * up + down - 1) / down);
        for (int m = 500; m < out.length - 500; m++) {
            assertThat(out[m]).isCloseTo(wanted[m], within(1e-4));
        }
    }

    /** A signal that ends at 7/12 of its half rate is doubled just as truly with room given up, and more cheaply. */
    @Test
    void aSignalThatLeavesRoomMayBeDoubledWithAWiderMargin() {
        Resampler resampler = new Resampler(2, 1, 5.0 / 12);
        double[] out = DoubleStream.concat(
                        Arrays.stream(resampler.process(sine(28_000, 96_000, 4000), 4000)),
                        Arrays.stream(resampler.finish()))
                .toArray();
        double[] wanted = sine(28_000, 192_000, out.length);
        for (int m = 200; m < out.length - 200; m++) {
            assertThat(out[m]).isCloseTo(wanted[m], within(1e-4));
        }
        assertThatThrownBy(() -> new Resampler(2, 1, 1)).hasMessageContaining("margin");
    }

    @ParameterizedTest
    @CsvSource({"30000", "40000"})
    void whatTheNewRateCannotHoldIsGone(double frequencyHz) {
        double[] out = resampled(1, 2, sine(frequencyHz, 96_000, 8000), 1000);
        assertThat(Arrays.stream(out, 500, out.length - 500)
                        .map(Math::abs)
                        .max()
                        .orElseThrow())
                .isLessThan(1e-5);
    }

    @ParameterizedTest
    @CsvSource({"160, 147", "1, 2", "4, 1", "7, 3"})
    void cuttingTheSignalIntoBlocksChangesNothing(int up, int down) {
        double[] signal = sine(1000, 44_100, 3000);
        assertThat(resampled(up, down, signal, 61)).isEqualTo(resampled(up, down, signal, 3000));
    }

    @Test
    void theSameRateLeavesTheSamplesAlone() {
        double[] signal = sine(23_000, 48_000, 100);
        assertThat(resampled(1, 1, signal, 17)).isEqualTo(signal);
    }

    @Test
    void nothingStaysNothing() {
        assertThat(new Resampler(160, 147).finish()).isEmpty();
    }

    @Test
    void factorsBelowOneAreRefused() {
        assertThatThrownBy(() -> new Resampler(0, 1)).hasMessageContaining("whole factors");
    }
}
