package io.github.tapwright.tap;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.Chance;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Strikes of one body belong together however hard it was struck; those of two bodies are warned of, in one recording or several. */
class UnlikePartsTest {

    private static final int RATE_HZ = 44_100;
    private static final double[] ONE_BODY = {101, 187, 231, 286, 370};
    private static final double[] ANOTHER = {101, 199, 228, 301, 355};

    private final Random chance = Chance.seeded(26);
    private double scatter = 0.05;

    /** Strikes a second and a half apart, unlike in strength, and a little in what they excite. */
    private TapTrack track(double[] modesHz, int strikes) {
        return track(strikes, modesHz, 0, modesHz);
    }

    /** Some strikes of a first body, then some of a second. */
    private TapTrack track(int strikes, double[] modesHz, int strikesOfSecond, double[] modesOfSecondHz) {
        double[] x = new double[(int) ((1 + 1.5 * (strikes + strikesOfSecond)) * RATE_HZ)];
        for (int n = 0; n < x.length; n++) {
            x[n] = 1e-5 * chance.nextGaussian();
        }
        for (int strike = 0; strike < strikes + strikesOfSecond; strike++) {
            double strength = 0.05 + 0.1 * chance.nextDouble();
            for (double hz : strike < strikes ? modesHz : modesOfSecondHz) {
                add(x, 1 + 1.5 * strike, hz, strength * (1 + scatter * chance.nextGaussian()));
            }
        }
        return TapTrack.read(Recording.of(new SampleRate(RATE_HZ), x).stream(), TapSettings.STANDARD);
    }

    private static void add(double[] x, double fromSeconds, double hz, double amplitude) {
        double sigma = Math.PI * hz / 30;
        for (int n = (int) (fromSeconds * RATE_HZ); n < x.length; n++) {
            double t = (double) n / RATE_HZ - fromSeconds;
            x[n] += amplitude * Math.exp(-sigma * t) * Math.sin(2 * Math.PI * hz * t);
        }
    }

    private static List<String> warnings(TapTrack... tracks) {
        return StrikeSet.find(List.of(tracks), TapSettings.STANDARD).notes().stream()
                .filter(n -> n.contains("sound like two bodies"))
                .toList();
    }

    @Test
    void oneBodyIsOneSetHoweverItWasStruck() {
        for (int set = 0; set < 30; set++) {
            assertThat(warnings(track(ONE_BODY, 3), track(ONE_BODY, 3), track(ONE_BODY, 4)))
                    .isEmpty();
        }
    }

    @Test
    void twoBodiesAreWarnedOfByTheNumbersOfTheirRecordings() {
        assertThat(warnings(track(ONE_BODY, 4), track(ONE_BODY, 4), track(ANOTHER, 4)))
                .singleElement()
                .asString()
                .containsPattern(
                        "recordings [12] and 3 sound like two bodies, two set-ups or two places struck: their spectra lie \\d\\.\\d dB apart")
                .contains("analyse them one by one");
    }

    @Test
    void twoStrikesARecordingCannotTell() {
        assertThat(warnings(track(ONE_BODY, 2), track(ANOTHER, 2))).isEmpty();
    }

    /** Scatter of the modes' strengths up to 2.6 dB, which lifts many distances above the least that counts. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.15, 0.3})
    void oneBodyInOneRecordingIsNotWarnedOf(double scatterOfStrikes) {
        scatter = scatterOfStrikes;
        int warned = 0;
        for (int set = 0; set < 100; set++) {
            warned += warnings(track(ONE_BODY, 6 + set % 7)).size();
        }
        System.out.printf("scatter %.2f: %d of 100 recordings of one body warned of%n", scatter, warned);
        assertThat(warned).isLessThanOrEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"3, 3, 4.00, 5.50", "6, 6, 8.50, 10.00", "4, 5, 5.50, 7.00", "5, 3, 7.00, 8.50"})
    void twoBodiesInOneRecordingAreWarnedOfByTheTime(int strikes, int strikesOfSecond, String last, String first) {
        assertThat(warnings(track(strikes, ONE_BODY, strikesOfSecond, ANOTHER)))
                .singleElement()
                .asString()
                .startsWith("the strikes up to " + last + " s and those from " + first
                        + " s on sound like two bodies, two set-ups")
                .contains("tap each body, set-up and place into a recording of its own");
    }

    @Test
    void theTimeIsFoundBesideScatterToo() {
        scatter = 0.08;
        for (int set = 0; set < 20; set++) {
            assertThat(warnings(track(5, ONE_BODY, 5, ANOTHER)))
                    .singleElement()
                    .asString()
                    .startsWith("the strikes up to 7.00 s and those from 8.50 s on");
        }
    }

    @Test
    void ofSeveralRecordingsTheOneThatHoldsTwoBodiesIsNamedThoughTheOtherIsSilent() {
        assertThat(warnings(track(ONE_BODY, 0), track(4, ONE_BODY, 4, ANOTHER)))
                .singleElement()
                .asString()
                .startsWith("the strikes of recording 2 up to 5.50 s and those from 7.00 s on");
    }

    @Test
    void fewerThanThreeStrikesOfEachCannotTell() {
        assertThat(warnings(track(3, ONE_BODY, 2, ANOTHER))).isEmpty();
    }
}
