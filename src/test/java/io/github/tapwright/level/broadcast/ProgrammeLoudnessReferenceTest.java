package io.github.tapwright.level.broadcast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.Sound;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Loudness against [BS1770], [EBU3341] table 1 and [EBU3342], which also give the tolerances. Cases 7 and 8 of
 * the former and 5 and 6 of the latter are excerpts of real programmes and cannot be computed.
 */
class ProgrammeLoudnessReferenceTest {

    private static final double RATE_HZ = 48_000;
    private static final Offset<Double> TENTH = within(0.1);

    /** "A 0 dB FS 997 Hz sine on one channel reads −3.01 LKFS", and how close other rates come. */
    @ParameterizedTest
    @ValueSource(doubles = {44_100, 48_000, 96_000})
    void fullScaleSine(double rateHz) {
        ProgrammeLoudness loudness = Programme.measured(rateHz, List.of(1.0), Sound.sine(rateHz, 10, 997, 0));
        double found = loudness.integratedLufs().orElseThrow();
        System.out.printf("997 Hz at full scale, rate %.0f Hz: %.4f LUFS%n", rateHz, found);
        assertThat(found).isCloseTo(-3.01, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({"-23", "-33"})
    void steadyTonesCases1And2(double levelDb) {
        for (double rateHz : new double[] {44_100, 48_000, 96_000}) {
            ProgrammeLoudness loudness = Programme.stereo(rateHz, Programme.tones(rateHz, levelDb, 20));
            assertThat(loudness.integratedLufs().orElseThrow()).isCloseTo(levelDb, TENTH);
            assertThat(loudness.momentaryMaxLufs().orElseThrow()).isCloseTo(levelDb, TENTH);
            assertThat(loudness.shortTermMaxLufs().orElseThrow()).isCloseTo(levelDb, TENTH);
        }
    }

    @Test
    void gatingCases3To5() {
        assertIntegrated(Programme.tones(RATE_HZ, -36, 10, -23, 60, -36, 10));
        assertIntegrated(Programme.tones(RATE_HZ, -72, 10, -36, 10, -23, 60, -36, 10, -72, 10));
        assertIntegrated(Programme.tones(RATE_HZ, -26, 20, -20, 20.1, -26, 20));
    }

    @Test
    void fiveChannelsCase6() {
        ProgrammeLoudness loudness = Programme.measured(
                RATE_HZ,
                ChannelWeights.ofUsualLayout(5).orElseThrow().weights(),
                Programme.tones(RATE_HZ, -28, 20),
                Programme.tones(RATE_HZ, -28, 20),
                Programme.tones(RATE_HZ, -24, 20),
                Programme.tones(RATE_HZ, -30, 20),
                Programme.tones(RATE_HZ, -30, 20));
        assertThat(loudness.integratedLufs().orElseThrow()).isCloseTo(-23, TENTH);
    }

    /** Constant after 3 s or 1 s, so the largest value is the constant one; the start is below it. */
    @Test
    void windowsThatSeeConstantPowerCases9And12() {
        double[] slow = Programme.repeated(Programme.tones(RATE_HZ, -20, 1.34, -30, 1.66), 5);
        assertThat(Programme.stereo(RATE_HZ, slow).shortTermMaxLufs().orElseThrow())
                .isCloseTo(-23, TENTH);
        double[] fast = Programme.repeated(Programme.tones(RATE_HZ, -20, 0.18, -30, 0.22), 25);
        assertThat(Programme.stereo(RATE_HZ, fast).momentaryMaxLufs().orElseThrow())
                .isCloseTo(-23, TENTH);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 7, 13, 19})
    void oneToneAnywhereCases10And13(int i) {
        double[] slow = Programme.tones(RATE_HZ, Programme.SILENCE_DB, 0.15 * i, -23, 3, Programme.SILENCE_DB, 1);
        assertThat(Programme.stereo(RATE_HZ, slow).shortTermMaxLufs().orElseThrow())
                .isCloseTo(-23, TENTH);
        double[] fast = Programme.tones(RATE_HZ, Programme.SILENCE_DB, 0.02 * i, -23, 0.4, Programme.SILENCE_DB, 1);
        assertThat(Programme.stereo(RATE_HZ, fast).momentaryMaxLufs().orElseThrow())
                .isCloseTo(-23, TENTH);
    }

    /** Each tone of cases 11 and 14 alone: 3 s in 6 s, 400 ms in 0.8 s, at −38 + i dB. */
    @ParameterizedTest
    @ValueSource(ints = {0, 5, 10, 19})
    void risingTonesCases11And14(int i) {
        double levelDb = -38 + i;
        double[] slow = Programme.tones(RATE_HZ, Programme.SILENCE_DB, 1.5, levelDb, 3, Programme.SILENCE_DB, 1.5);
        assertThat(Programme.stereo(RATE_HZ, slow).shortTermMaxLufs().orElseThrow())
                .isCloseTo(levelDb, TENTH);
        double[] fast = Programme.tones(RATE_HZ, Programme.SILENCE_DB, 0.2, levelDb, 0.4, Programme.SILENCE_DB, 0.2);
        assertThat(Programme.stereo(RATE_HZ, fast).momentaryMaxLufs().orElseThrow())
                .isCloseTo(levelDb, TENTH);
    }

    /** [EBU3342] cases 1 to 4, steps of 20 s; tolerance ±1 LU. */
    @Test
    void loudnessRange() {
        assertRange(10, -20, 20, -30, 20);
        assertRange(5, -20, 20, -15, 20);
        assertRange(20, -40, 20, -20, 20);
        assertRange(15, -50, 20, -35, 20, -20, 20, -35, 20, -50, 20);
    }

    /**
     * A fade of 10 dB a second for 6 s, its range worked out by hand from [EBU3342], 3.1 and 5. With 1.5 s of silence
     * after it there are 46 windows of 3 s, ending at 3.0 to 7.5 s. Power falls by a tenth in a second, so a window
     * ending at e, up to 6 s, holds 10^(3 − e) − 10^(−e), a later one 10^(3 − e) − 10^(−6).
     */
    @Test
    void loudnessRangeOfAFade() {
        double[] powers = IntStream.rangeClosed(30, 75)
                .mapToDouble(k -> Math.pow(10, 3 - k / 10.0) - Math.pow(10, -Math.min(k / 10.0, 6)))
                .toArray();
        double gate = Arrays.stream(powers).average().orElseThrow() / 100;
        double[] kept = Arrays.stream(powers).filter(p -> p >= gate).sorted().toArray();
        double low = kept[(int) Math.round(0.10 * (kept.length - 1))];
        double high = kept[(int) Math.round(0.95 * (kept.length - 1))];
        double[] fade = Sound.of(RATE_HZ, 6, t -> 0.5 * Math.pow(10, -t / 2) * Math.sin(2 * Math.PI * 1000 * t));
        double found = Programme.stereo(RATE_HZ, fade).loudnessRangeLu().orElseThrow();
        System.out.printf("loudness range of a fade: %.3f LU for %.3f LU%n", found, 10 * Math.log10(high / low));
        assertThat(found).isCloseTo(10 * Math.log10(high / low), within(0.02));
    }

    private static void assertIntegrated(double[] channel) {
        double found = Programme.stereo(RATE_HZ, channel).integratedLufs().orElseThrow();
        System.out.printf("gated tones: %.3f LUFS%n", found);
        assertThat(found).isCloseTo(-23, TENTH);
    }

    private static void assertRange(double expectedLu, double... levelsAndSeconds) {
        double found = Programme.stereo(RATE_HZ, Programme.tones(RATE_HZ, levelsAndSeconds))
                .loudnessRangeLu()
                .orElseThrow();
        System.out.printf("loudness range: %.2f LU for %.0f LU%n", found, expectedLu);
        assertThat(found).isCloseTo(expectedLu, within(1.0));
    }
}
