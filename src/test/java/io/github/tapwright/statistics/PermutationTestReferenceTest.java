package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.Chance;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Published data whose arrangements others have counted; counts are whole numbers, so nothing is tolerated. */
class PermutationTestReferenceTest {

    /** Heights of crossed less self-fertilised maize in eighths of an inch, [Darwin1876] as used in [Fisher1935]. */
    private static final double[] MAIZE = {49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48};

    /** Mice with and without treatment, days, [EfronTibshirani1993] table 2.1, from memory, to be verified. */
    private static final double[] TREATED = {94, 197, 16, 38, 99, 141, 23};

    private static final double[] CONTROL = {52, 104, 146, 10, 51, 30, 40, 27, 46};

    @Test
    void maizeInPairs() {
        PermutationResult result = PermutationTest.USUAL.ofPairs(MAIZE);

        // [Fisher1935]: 863 of 32 768 in one tail
        assertThat(result.kind()).isEqualTo(Arrangements.EVERY);
        assertThat(result.counted()).isEqualTo(32_768);
        assertThat(result.asFarUp()).isEqualTo(863);
        assertThat(result.asFarApart()).isEqualTo(1726);
        assertThat(result.difference()).isCloseTo(314 / 15.0, within(1e-12));
    }

    @Test
    void nineAgainstTen() {
        double[] treatment = {85, 88, 75, 66, 25, 29, 83, 39, 97};
        double[] control = {68, 41, 10, 49, 16, 65, 32, 92, 28, 98};

        PermutationResult result = PermutationTest.USUAL.ofMeans(control, treatment);

        // [RosettaCode]: 80 238 below, 313 equal, 11 827 above, of 92 378
        assertThat(result.counted()).isEqualTo(92_378);
        assertThat(result.asFarUp()).isEqualTo(11_827 + 313);
        assertThat(result.asFarDown()).isEqualTo(80_238 + 313);
    }

    @Test
    void miceEitherWayRound() {
        PermutationResult result = PermutationTest.USUAL.ofMeans(CONTROL, TREATED);
        PermutationResult reversed = PermutationTest.USUAL.ofMeans(TREATED, CONTROL);

        // counted by another program: 1613 one-sided, 3184 two-sided, of 11 440; the book's thousand draws gave 0.132
        assertThat(result.counted()).isEqualTo(11_440);
        assertThat(result.asFarUp()).isEqualTo(1613);
        assertThat(result.asFarApart()).isEqualTo(3184);
        assertThat(reversed.asFarDown()).isEqualTo(1613);
        assertThat(reversed.asFarApart()).isEqualTo(3184);
        assertThat(reversed.difference()).isCloseTo(-30.6349, within(5e-5));
    }

    @Test
    void sumsThatDifferByRoundingAloneCountAsEqual() {
        // [RosettaCode]'s pair of gauges; 58 of 924 counted in exact decimals by another program
        PermutationResult result = PermutationTest.USUAL.ofMeans(
                new double[] {30.02, 29.99, 30.11, 29.97, 30.01, 29.99},
                new double[] {29.89, 29.93, 29.72, 29.98, 30.02, 29.98});

        assertThat(result.counted()).isEqualTo(924);
        assertThat(result.asFarApart()).isEqualTo(58);
    }

    @Test
    void beyondTheLimitRandomArrangementsAgreeWithinTheirOwnUncertainty() {
        PermutationTest drawing = new PermutationTest(1000, 20_000, 42);

        PermutationResult groups = drawing.ofMeans(CONTROL, TREATED);
        PermutationResult pairs = drawing.ofPairs(MAIZE);

        assertThat(groups.kind()).isEqualTo(Arrangements.RANDOM_UNTIL_SURE);
        assertThat(groups.asFarApart()).isEqualTo(400);
        assertThat(groups.probability()).isCloseTo(3184 / 11440.0, within(3 * groups.probabilityUncertainty()));
        assertThat(groups.probabilityUncertainty()).isCloseTo(0.278 * Math.sqrt(0.722 / 400), within(2e-3));
        assertThat(pairs.probability()).isCloseTo(1726 / 32_768.0, within(3 * pairs.probabilityUncertainty()));
    }

    @Test
    void whereFewLieAsFarApartAllAreCounted() {
        PermutationResult far = new PermutationTest(1000, 5000, 42)
                .ofMeans(new double[] {1, 2, 3, 4, 5, 6, 7, 8}, new double[] {7, 8, 9, 10, 11, 12, 13, 14});

        assertThat(far.kind()).isEqualTo(Arrangements.RANDOM);
        assertThat(far.counted()).isEqualTo(5000);
        assertThat(far.probability()).isEqualTo((far.asFarApart() + 1.0) / 5001);
        assertThat(far.probabilityUncertainty())
                .isCloseTo(Math.sqrt(far.probability() * (1 - far.probability()) / 5001), within(1e-12));
    }

    /** Of no effect, one in twenty lies below 5 %, whether the count ended early or not. */
    @Test
    void probabilitiesOfACountThatEndsEarlyAreEvenlySpread() {
        Random chance = Chance.seeded(77);
        int below = 0;
        int half = 0;
        for (int i = 0; i < 2000; i++) {
            double[] a = chance.doubles(12).toArray();
            double[] b = chance.doubles(12).toArray();
            double p = new PermutationTest(1, 2000, i).ofMeans(a, b).probability();
            below += p < 0.05 ? 1 : 0;
            half += p < 0.5 ? 1 : 0;
        }
        // Three standard deviations of a count of 2000 at 5 % and at 50 %.
        assertThat(below).isBetween(100 - 29, 100 + 29);
        assertThat(half).isBetween(1000 - 67, 1000 + 67);
    }

    @Test
    void theSameSeedGivesTheSameCount() {
        PermutationTest drawing = new PermutationTest(1, 500, 7);

        assertThat(drawing.ofMeans(CONTROL, TREATED)).isEqualTo(drawing.ofMeans(CONTROL, TREATED));
        assertThat(drawing.ofMeans(CONTROL, TREATED))
                .isNotEqualTo(new PermutationTest(1, 500, 8).ofMeans(CONTROL, TREATED));
    }

    @Test
    void refusesCountsThatProveNothing() {
        assertThatThrownBy(() -> new PermutationTest(0, 1000, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PermutationTest(10, 99, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PermutationTest.USUAL.ofPairs()).hasMessageContaining("pair");
        assertThatThrownBy(() -> PermutationTest.USUAL.ofMeans(new double[0], CONTROL))
                .hasMessageContaining("each group");
        assertThatThrownBy(() -> PermutationTest.USUAL.ofMeans(CONTROL, new double[0]))
                .hasMessageContaining("each group");
    }
}
