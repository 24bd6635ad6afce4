package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.signal.LineShape;
import io.github.tapwright.synthesis.Chance;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Truth from the exact spectrum of two decaying sines. */
class PairGuessTest {

    private static final double RATE_HZ = 24_000;
    private static final int LENGTH = 120_000;
    private static final int FIRST_BIN = 1_060;
    private static final int BINS = 90;
    private static final DecayingTone FAST = DecayingTone.of(220.3, 6);
    private static final DecayingTone SLOW = DecayingTone.of(220.0, 1);

    private static LineBand band(List<SoundingTone> tones, double noise) {
        LineShape shape = new LineShape(FIRST_BIN, BINS, LENGTH, RATE_HZ);
        Random chance = Chance.seeded(17);
        double[] rows = DoubleStream.generate(() -> noise * chance.nextGaussian())
                .limit(2 * BINS)
                .toArray();
        for (SoundingTone t : tones) {
            shape.add(t.tone().omega(), t.tone().sigma(), t.cosine(), t.sine(), rows);
        }
        return new LineBand(FIRST_BIN, rows, shape, RATE_HZ / LENGTH);
    }

    private static PartialFit single(LineBand band) {
        return PartialChoice.one(band, SLOW).orElseThrow();
    }

    private static List<DecayingTone> guess(LineBand band) {
        return PairGuess.of(single(band)).orElseThrow().stream()
                .sorted(Comparator.comparingDouble(DecayingTone::sigma))
                .toList();
    }

    @Test
    void twoLinesAThirdOfAHertzApartAreTakenApartAtOnce() {
        List<DecayingTone> found =
                guess(band(List.of(new SoundingTone(FAST, 0.1, -0.05), new SoundingTone(SLOW, -0.02, 0.02)), 0));
        assertThat(found.get(0).hz()).isCloseTo(SLOW.hz(), Offset.offset(0.001));
        assertThat(found.get(1).hz()).isCloseTo(FAST.hz(), Offset.offset(0.001));
        assertThat(found.get(0).sigma()).isCloseTo(SLOW.sigma(), Percentage.withPercentage(1));
        assertThat(found.get(1).sigma()).isCloseTo(FAST.sigma(), Percentage.withPercentage(1));
    }

    @Test
    void inNoiseTheGuessExplainsNearlyWhatTheBestPairDoes() {
        LineBand band = band(List.of(new SoundingTone(FAST, 0.1, -0.05), new SoundingTone(SLOW, -0.02, 0.02)), 0.05);
        PartialFit one = single(band);
        PartialFit guessed = new PartialFit(band, guess(band));
        PartialFit best = PartialRefinement.refine(guessed, 50);
        assertThat(one.cost()).isGreaterThan(4 * best.cost());
        assertThat(guessed.cost()).isLessThan(1.05 * best.cost());
    }

    @Test
    void noiseAroundOneLineIsNotTakenForASecond() {
        LineBand band = band(List.of(new SoundingTone(SLOW, 0.1, 0)), 0.05);
        assertThat(PartialChoice.oneOrTwo(single(band)).tones()).hasSize(1);
    }
}
