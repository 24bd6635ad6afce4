package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A straight line in each part goes, what is no straight line stays. */
class ComplexLineTest {

    private static final int BINS = 31;

    @Test
    void takesAStraightLineAwayWhole() {
        double[] rows = new double[2 * BINS];
        for (int i = 0; i < BINS; i++) {
            rows[i] = 3 - 0.2 * i;
            rows[BINS + i] = -1 + 0.7 * i;
        }
        new ComplexLine(BINS).takeAway(rows);

        assertThat(rows).containsExactly(new double[2 * BINS], within(1e-13));
    }

    /** What is left is at right angles to each column, which is what least squares means. */
    @Test
    void leavesNothingAlongItsColumns() {
        ComplexLine line = new ComplexLine(BINS);
        double[] rows = new Random(20261129).doubles(2 * BINS, -1, 1).toArray();
        double before = ScalarProduct.of(rows, rows);
        line.takeAway(rows);

        assertThat(line.columns()).hasDimensions(ComplexLine.COLUMNS, 2 * BINS);
        for (double[] column : line.columns()) {
            assertThat(ScalarProduct.of(column, rows)).isEqualTo(0, within(1e-13));
        }
        assertThat(ScalarProduct.of(rows, rows)).isBetween(0.5 * before, before);
    }

    @Test
    void ofOneBinOnlyTheHeightIsTaken() {
        double[] rows = {2, 5};
        new ComplexLine(1).takeAway(rows);

        assertThat(rows).containsExactly(0, 0);
    }
}
