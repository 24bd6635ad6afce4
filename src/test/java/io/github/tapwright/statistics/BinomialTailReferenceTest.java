package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The binomial tail against published tables of sensory tests and against counted cases. */
class BinomialTailReferenceTest {

    /** Fewest right answers of a duo-trio test, chance one half: [ISO10399], table A.1; exact, so no tolerance. */
    @ParameterizedTest
    @CsvSource({
        "10, 8, 9, 10, 10",
        "11, 9, 9, 10, 11",
        "12, 9, 10, 11, 12",
        "13, 10, 10, 12, 13",
        "14, 10, 11, 12, 13",
        "15, 11, 12, 13, 14",
        "16, 12, 12, 14, 15",
        "17, 12, 13, 14, 16",
        "18, 13, 13, 15, 16",
        "19, 13, 14, 15, 17",
        "20, 14, 15, 16, 18"
    })
    void theTableOfTheDuoTrioTest(int count, int at10, int at5, int at1, int at01) {
        assertThat(BinomialTail.needed(count, 0.5, 0.10)).isEqualTo(at10);
        assertThat(BinomialTail.needed(count, 0.5, 0.05)).isEqualTo(at5);
        assertThat(BinomialTail.needed(count, 0.5, 0.01)).isEqualTo(at1);
        assertThat(BinomialTail.needed(count, 0.5, 0.001)).isEqualTo(at01);
    }

    /** Fewest right answers of a triangle test, chance one third: [FAO348], appendix A; exact, so no tolerance. */
    @ParameterizedTest
    @CsvSource({"10, 7, 8, 9", "16, 9, 11, 12", "20, 11, 13, 14", "30, 15, 17, 19"})
    void theTableOfTheTriangleTest(int count, int at5, int at1, int at01) {
        assertThat(BinomialTail.needed(count, 1.0 / 3, 0.05)).isEqualTo(at5);
        assertThat(BinomialTail.needed(count, 1.0 / 3, 0.01)).isEqualTo(at1);
        assertThat(BinomialTail.needed(count, 1.0 / 3, 0.001)).isEqualTo(at01);
    }

    /** With even chances the tail is a number of outcomes of 2ⁿ, counted here in whole numbers. */
    @ParameterizedTest
    @CsvSource({"10, 9, 11", "10, 8, 56", "12, 10, 79", "16, 12, 2517", "16, 14, 137", "20, 15, 21700", "20, 20, 1"})
    void theTailsAreWholeNumbersOfOutcomes(int count, int right, long outcomes) {
        BigInteger counted = BigInteger.ZERO;
        BigInteger ways = BigInteger.ONE;
        for (int i = count; i >= right; i--) {
            counted = counted.add(ways);
            ways = ways.multiply(BigInteger.valueOf(i)).divide(BigInteger.valueOf(count - i + 1L));
        }
        assertThat(counted).isEqualTo(BigInteger.valueOf(outcomes));
        // 1e-13: the library's incomplete beta function carries some fifteen figures
        double expected = Math.scalb((double) outcomes, -count);
        assertThat(BinomialTail.atLeast(right, count, 0.5)).isCloseTo(expected, within(1e-13 * expected));
    }

    @Test
    void theEndsAreCertain() {
        assertThat(BinomialTail.atLeast(0, 16, 0.5)).isEqualTo(1);
        assertThat(BinomialTail.needed(4, 0.5, 0.05)).as("not even all of four").isEqualTo(5);
        assertThatIllegalArgumentException().isThrownBy(() -> BinomialTail.atLeast(17, 16, 0.5));
    }
}
