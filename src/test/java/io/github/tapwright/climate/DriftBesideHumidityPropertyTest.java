package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.climate.HumidityHistory.Point;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.LinearFit;
import io.github.tapwright.synthesis.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A main top that follows humidity by −0.15 % a point and drifts by −0.1 % a month besides; set-ups scatter by 0.1 %. */
class DriftBesideHumidityPropertyTest {

    private static final int HISTORIES = 2000;
    private static final double TRUTH = -0.15;

    private final Random chance = Chance.seeded(61);

    /** Monthly sittings in air that grows damper by so much a month, and swings by so much about that. */
    private List<Point> history(int months, double damperAMonth, double swing) {
        List<Point> points = new ArrayList<>();
        for (int month = 0; month < months; month++) {
            double percent = 42 + damperAMonth * month + swing * chance.nextGaussian();
            double share = TRUTH / 100 * (percent - 45) - 0.001 * month + 0.001 * chance.nextGaussian();
            points.add(new Point(30 * month, percent, 187 * Math.exp(share)));
        }
        return points;
    }

    private static HumiditySensitivity told(List<Point> points) {
        return HumiditySensitivity.of(new HumidityHistory(HumidityScale.RELATIVE_HUMIDITY, points));
    }

    private static boolean holdsTheTruth(HumiditySensitivity k) {
        return new Estimate(k.percentPerPoint(), k.standardUncertainty(), k.degreesOfFreedom())
                .interval95()
                .contains(TRUTH);
    }

    /** What humidity alone, without time beside it, makes of the same history. */
    private static boolean byHumidityAloneHoldsTheTruth(List<Point> points) {
        return LinearFit.line(
                        points.stream().mapToDouble(Point::dampness).toArray(),
                        points.stream()
                                .mapToDouble(p -> 100 * Math.log(p.frequencyHz()))
                                .toArray())
                .coefficients()
                .get(1)
                .interval95()
                .contains(TRUTH);
    }

    /** Shares of the histories that teach anything in which the slope's interval holds the truth. */
    private record Held(double besideTime, double byHumidityAlone) {}

    private Held held(int months, double damperAMonth, double swing) {
        int learnt = 0;
        int held = 0;
        int alone = 0;
        for (int i = 0; i < HISTORIES; i++) {
            List<Point> points = history(months, damperAMonth, swing);
            HumiditySensitivity k = told(points);
            if (k.basis() == SensitivityBasis.LEARNT) {
                learnt++;
                held += holdsTheTruth(k) ? 1 : 0;
                alone += byHumidityAloneHoldsTheTruth(points) ? 1 : 0;
            }
        }
        System.out.printf(
                "%d months, %.1f points damper each, swing %.0f: learnt %.1f %% of %d, holds the truth %.1f %%, by humidity alone %.1f %%%n",
                months,
                damperAMonth,
                swing,
                100.0 * learnt / HISTORIES,
                HISTORIES,
                100.0 * held / learnt,
                100.0 * alone / learnt);
        return new Held((double) held / learnt, (double) alone / learnt);
    }

    @Test
    void aDriftIsNotLearntAsHumidity() {
        Held damper = held(8, 1, 4);
        assertThat(damper.besideTime()).isBetween(0.935, 0.965);
        assertThat(damper.byHumidityAlone())
                .as("the drift is taken for humidity")
                .isLessThan(0.9);
        assertThat(held(8, 0, 5).besideTime()).isBetween(0.935, 0.965);
        assertThat(held(5, 1, 4).besideTime()).isBetween(0.935, 0.965);
        assertThat(held(12, 2, 4).besideTime()).isBetween(0.935, 0.965);
    }

    @Test
    void whereHumidityRanWithTimeNothingIsLearnt() {
        int learnt = 0;
        for (int i = 0; i < HISTORIES; i++) {
            HumiditySensitivity k = told(history(8, 2.4, 1));
            learnt += k.basis() == SensitivityBasis.LEARNT ? 1 : 0;
            assertThat(k.basis()).isIn(SensitivityBasis.LEARNT, SensitivityBasis.ASSUMED_RAN_WITH_TIME);
        }
        System.out.printf(
                "8 months, 2.4 points damper each, swing 1: learnt %.1f %% of %d%n",
                100.0 * learnt / HISTORIES, HISTORIES);
        assertThat(learnt).isLessThan(HISTORIES / 50);
    }
}
