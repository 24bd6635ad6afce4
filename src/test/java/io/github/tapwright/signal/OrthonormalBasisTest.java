package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A basis stays orthonormal however alike its columns are, and its least squares are those of the columns themselves. */
class OrthonormalBasisTest {

    private static final int ROWS = 60;

    private final Random chance = new Random(20261129);

    private double[] random() {
        return chance.doubles(ROWS, -1, 1).toArray();
    }

    private static double[] sum(double[] x, double times, double[] y) {
        double[] sum = x.clone();
        for (int r = 0; r < sum.length; r++) {
            sum[r] += times * y[r];
        }
        return sum;
    }

    /** From columns that have nothing to do with each other to columns that differ in the tenth digit. */
    @Test
    void columnsStayOrthonormalHoweverAlike() {
        for (double apart = 1; apart > 1e-11; apart /= 10) {
            OrthonormalBasis basis = new OrthonormalBasis(5);
            double[] first = random();
            basis.add(first);
            for (int c = 1; c < 5; c++) {
                basis.add(sum(first, apart, random()));
            }
            double[] rows = random();
            basis.takeAway(rows);
            assertThat(basis.shares(rows))
                    .as("columns %.0e apart", apart)
                    .containsExactly(new double[5], within(1e-13));
        }
    }

    @Test
    void findsTheStrengthsThatWerePutIn() {
        OrthonormalBasis basis = new OrthonormalBasis(3);
        double[] a = random();
        double[] b = sum(a, 1e-3, random());
        double[] c = random();
        basis.add(a);
        basis.add(b);
        basis.add(c);
        double[] rows = sum(sum(sum(new double[ROWS], 2, a), -3, b), 0.5, c);

        double[] strengths = basis.solve(basis.takeAway(rows));

        assertThat(strengths[0]).isEqualTo(2, within(1e-10));
        assertThat(strengths[1]).isEqualTo(-3, within(1e-10));
        assertThat(strengths[2]).isEqualTo(0.5, within(1e-10));
        assertThat(ScalarProduct.of(rows, rows)).isEqualTo(0, within(1e-24));
    }

    @Test
    void aColumnThatOthersExplainGetsNoStrength() {
        OrthonormalBasis basis = new OrthonormalBasis(3);
        double[] a = random();
        double[] b = random();
        basis.add(a);
        basis.add(b);
        basis.add(sum(a, 2, b));

        double[] strengths = basis.solve(basis.takeAway(sum(a, 1, b)));

        assertThat(basis.size()).isEqualTo(3);
        assertThat(strengths[2]).isZero();
        assertThat(strengths[0]).isEqualTo(1, within(1e-12));
    }

    @Test
    void whatIsTakenAwayBeforehandIsNoPartOfIt() {
        ComplexLine line = new ComplexLine(ROWS / 2);
        OrthonormalBasis basis = new OrthonormalBasis(2, line::takeAway);
        double[] a = random();
        basis.add(a);
        double[] height = line.columns()[0];

        assertThat(basis.shares(height)[0]).isEqualTo(0, within(1e-13));
        double[] strengths = basis.solve(basis.takeAway(sum(height, 4, a)));
        assertThat(strengths[0]).isEqualTo(4, within(1e-12));
    }
}
