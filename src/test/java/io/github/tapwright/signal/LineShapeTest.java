package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The closed form is the transform of the samples themselves, and its derivatives are its slopes. */
class LineShapeTest {

    private static final int LENGTH = 400;
    private static final double RATE_HZ = 2000;
    private static final int FIRST_BIN = 15;
    private static final int BINS = 20;
    private static final double OMEGA = 2 * Math.PI * 112.3;
    private static final double SIGMA = 9;

    private final LineShape shape = new LineShape(FIRST_BIN, BINS, LENGTH, RATE_HZ);

    private double[][] columns(double omega, double sigma) {
        double[][] columns = new double[4][2 * BINS];
        shape.fill(omega, sigma, columns);
        return columns;
    }

    /** Sum by sum, as the discrete transform is defined. */
    private static double[] transformed(double cosine, double sine) {
        double[] rows = new double[2 * BINS];
        for (int i = 0; i < BINS; i++) {
            for (int n = 0; n < LENGTH; n++) {
                double t = n / RATE_HZ;
                double x = Math.exp(-SIGMA * t) * (cosine * Math.cos(OMEGA * t) + sine * Math.sin(OMEGA * t));
                double angle = -2 * Math.PI * (FIRST_BIN + i) * n / LENGTH;
                rows[i] += x * Math.cos(angle);
                rows[BINS + i] += x * Math.sin(angle);
            }
        }
        return rows;
    }

    private static void assertSame(double[] here, double[] there, double tolerance) {
        for (int r = 0; r < there.length; r++) {
            assertThat(here[r]).as("row %d", r).isEqualTo(there[r], within(tolerance));
        }
    }

    @Test
    void columnsAreTheTransformsOfCosineAndSine() {
        double[][] columns = columns(OMEGA, SIGMA);

        assertSame(columns[0], transformed(1, 0), 1e-10);
        assertSame(columns[1], transformed(0, 1), 1e-10);
    }

    @Test
    void addsWhatAStrengthOfEachContributes() {
        double[] rows = new double[2 * BINS];
        shape.add(OMEGA, SIGMA, 0.7, -0.4, rows);

        assertSame(rows, transformed(0.7, -0.4), 1e-10);
    }

    /** By ω the cosine's slope is the sine's by σ, the sine's is minus the cosine's by σ; central differences. */
    @Test
    void slopesAreThoseOfTheColumns() {
        double[][] here = columns(OMEGA, SIGMA);
        double step = 1e-4;
        double[][] more = columns(OMEGA, SIGMA + step);
        double[][] less = columns(OMEGA, SIGMA - step);
        double[][] higher = columns(OMEGA + step, SIGMA);
        double[][] lower = columns(OMEGA - step, SIGMA);
        for (int r = 0; r < 2 * BINS; r++) {
            assertThat((more[0][r] - less[0][r]) / (2 * step)).isEqualTo(here[2][r], within(1e-6));
            assertThat((more[1][r] - less[1][r]) / (2 * step)).isEqualTo(here[3][r], within(1e-6));
            assertThat((higher[0][r] - lower[0][r]) / (2 * step)).isEqualTo(here[3][r], within(1e-6));
            assertThat((higher[1][r] - lower[1][r]) / (2 * step)).isEqualTo(-here[2][r], within(1e-6));
        }
    }

    @Test
    void aSteadyToneOnABinIsTheSumOfOnes() {
        double[][] columns = columns(2 * Math.PI * FIRST_BIN * RATE_HZ / LENGTH, 0);

        assertThat(columns[0][0]).isEqualTo(LENGTH / 2.0, within(1e-9));
        assertThat(columns[0][BINS]).isEqualTo(0, within(1e-9));
    }
}
