package io.github.tapwright.tap;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.synthesis.NoiseLevel;
import io.github.tapwright.synthesis.PlantedFault;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A wave's top is flat where samples are written coarsely; that is no clipping, and clipping is still seen. */
class CoarseSamplesTest {

    private static final int SEEDS = 12;

    @Test
    void eightBitsAreNotTakenForClipping() {
        assertThat(strikesClipped(CoarseSamplesTest::eightBits, -1)).isEqualTo(List.of());
    }

    @Test
    void compandedSamplesAreNotTakenForClipping() {
        assertThat(strikesClipped(CoarseSamplesTest::companded, -1)).isEqualTo(List.of());
    }

    @Test
    void aStrikeAtFullScaleIsSeenInEightBitsAndNoOther() {
        assertThat(strikesClipped(CoarseSamplesTest::eightBits, 2))
                .containsExactlyElementsOf(
                        IntStream.range(0, SEEDS).mapToObj(seed -> seed + " 2").toList());
    }

    @Test
    void thatAFlatTopMayPassUnseenIsSaid() {
        assertThat(heard(scene(0, -1), CoarseSamplesTest::eightBits).notes())
                .anyMatch(n -> n.startsWith("the samples are written coarsely"));
        assertThat(heard(scene(0, -1), x -> Math.rint(32768 * x) / 32768).notes())
                .isEmpty();
        assertThat(heard(scene(0, -1), x -> Math.rint(32768 * x * 0.01) / 32768).notes())
                .as("a quiet recording of 16 bits")
                .isEmpty();
    }

    /** Every seed and strike that was called clipped. */
    private static List<String> strikesClipped(DoubleUnaryOperator writing, int cutFlat) {
        return IntStream.range(0, SEEDS)
                .boxed()
                .flatMap(seed -> clipped(seed, scene(seed, cutFlat), writing).stream())
                .toList();
    }

    private static SyntheticTaps scene(int seed, int cutFlat) {
        TapScene scene = TapScene.of(
                        TrueMode.resonator(101, 20, 0.6),
                        TrueMode.resonator(192 + seed, 30, 1),
                        TrueMode.resonator(233, 26, 0.4),
                        TrueMode.resonator(402, 35, 0.4))
                .seed(seed)
                .strikes(5, 1.2)
                .peak(-2 - seed)
                .whiteNoise(NoiseLevel.BODY_BAND, 40);
        return (cutFlat < 0 ? scene : scene.fault(cutFlat, PlantedFault.CLIPPED)).build();
    }

    private static List<String> clipped(int seed, SyntheticTaps taps, DoubleUnaryOperator writing) {
        List<Strike> strikes = heard(taps, writing).strikes();
        assertThat(strikes).hasSize(5);
        return IntStream.range(0, 5)
                .filter(i -> strikes.get(i).rejections().stream().anyMatch(r -> r.reason() == RejectionReason.CLIPPED))
                .mapToObj(i -> seed + " " + i)
                .toList();
    }

    private static StrikeSet heard(SyntheticTaps taps, DoubleUnaryOperator writing) {
        Recording clean = taps.recording();
        double[] written = Arrays.stream(clean.channel(0)).map(writing).toArray();
        TapTrack track = TapTrack.read(Recording.of(clean.sampleRate(), written).stream(), TapSettings.STANDARD);
        return StrikeSet.find(List.of(track), TapSettings.STANDARD);
    }

    private static double eightBits(double x) {
        return Math.max(-128, Math.min(127, Math.rint(128 * x))) / 128;
    }

    /** Four bits of each octave, as in G.711, down to 2^-12. */
    private static double companded(double x) {
        int exponent = Math.max(-12, Math.getExponent(x));
        double step = Math.scalb(1.0, exponent - 4);
        return Math.rint(x / step) * step;
    }
}
