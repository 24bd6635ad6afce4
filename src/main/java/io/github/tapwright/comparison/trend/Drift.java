package io.github.tapwright.comparison.trend;

import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.MannKendall;
import io.github.tapwright.statistics.TheilSen;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Whether one quantity drifts, as measured and in the common air.
 *
 * <p>Sittings of one day are one point in time, their median. Slope by Theil and Sen per month of 30.44 days, probability by Mann and
 * Kendall, exact up to twenty days. The verdict rests on the figures in the common air and the adjusted probability.
 *
 * @param measured of the figures as measured
 * @param corrected of the figures in the common air
 * @param regression with humidity beside time; empty where that cannot be asked
 * @param months from first to last day
 * @param setUpLimit what two set-ups of an unchanged body differ by at most, 19 times of 20, in the figure's unit
 * @param humidityLimit what the humidity that ran with time may have left in the figures at most, 19 times of 20, as its effect is not
 *     better known; 0 where nothing is corrected for it
 * @param adjustedProbability made larger for all questions asked at once
 */
public record Drift(
        Line measured,
        Line corrected,
        Optional<HumidityRegression> regression,
        double months,
        double setUpLimit,
        double humidityLimit,
        double adjustedProbability) {

    /** So many days: with four or fewer no drift can be shown at 5 % [Kendall1975]. */
    public static final int FEWEST = 5;

    private static final double SIGNIFICANT = 0.05;
    private static final double DAYS_A_MONTH = 30.44;
    private static final String AGAIN = "plucking again";

    /**
     * A robust line with its test.
     *
     * @param slope by Theil and Sen, per month
     * @param test by Mann and Kendall
     */
    public record Line(TheilSen slope, MannKendall test) {}

    /** Empty with too few days. */
    static Optional<Drift> of(Subject subject, List<DayFigure> days, BenchKnowledge bench) {
        if (days.size() < FEWEST) {
            return Optional.empty();
        }
        double[] months = months(days);
        Line corrected = line(months, days, DayFigure::corrected);
        double middle =
                days.stream().mapToDouble(DayFigure::corrected).average().orElseThrow();
        return Optional.of(new Drift(
                line(months, days, DayFigure::measured),
                corrected,
                HumidityRegression.of(months, days),
                months[months.length - 1],
                setUpLimit(subject, days, middle, bench),
                humidityLimit(subject, months, days, bench) * Math.abs(middle),
                corrected.test().probability()));
    }

    /**
     * Of plucks with what those of one sitting leave unsure, which is no small part of what they scatter: the degrees of freedom of both
     * together, no more than those of plucking again, nor more than the plucks' where that is assumed.
     */
    private static double setUpLimit(Subject subject, List<DayFigure> days, double middle, BenchKnowledge bench) {
        Estimate again = bench.again(subject, middle);
        if (!subject.equals(Subject.PLUCKS)) {
            return again.limitOfTwo95();
        }
        Estimate plucks = DayFigure.onAverage(days.stream().map(DayFigure::own).toList());
        return UncertaintyBudget.independent(0, new Component(AGAIN, again, 1), new Component("plucks", plucks, 1))
                .combinedAssuming(bench.plucks().assumed(AGAIN).collect(Collectors.toSet()))
                .knownNoBetterThan(again)
                .limitOfTwo95();
    }

    /** t(ν)·u_k·Δx, Δx what humidity's own line makes of the whole time; relative to the figure. */
    private static double humidityLimit(Subject subject, double[] months, List<DayFigure> days, BenchKnowledge bench) {
        boolean followsHumidity = subject.quantity() == Quantity.FREQUENCY || subject.quantity() == Quantity.DECAY_TIME;
        if (!followsHumidity || days.stream().anyMatch(d -> d.humidityPercent().isEmpty())) {
            return 0;
        }
        double[] humidity = days.stream()
                .mapToDouble(d -> d.humidityPercent().orElseThrow())
                .toArray();
        double points = TheilSen.of(months, humidity).slope() * months[months.length - 1];
        HumiditySensitivity k = bench.sensitivities().of(subject.resonance());
        return new Estimate(0, k.standardUncertainty() / 100, k.degreesOfFreedom()).halfWidth95() * Math.abs(points);
    }

    /** Since the first day. */
    private static double[] months(List<DayFigure> days) {
        return days.stream()
                .mapToDouble(d -> ChronoUnit.DAYS.between(days.get(0).day(), d.day()) / DAYS_A_MONTH)
                .toArray();
    }

    private static Line line(double[] months, List<DayFigure> days, ToDoubleFunction<DayFigure> of) {
        double[] values = days.stream().mapToDouble(of).toArray();
        return new Line(TheilSen.of(months, values), MannKendall.of(months, values));
    }

    /**
     * Whether it drifts, all questions considered.
     *
     * @return true if the adjusted probability is below 5 % and humidity cannot explain it
     */
    public boolean drifts() {
        return adjustedProbability < SIGNIFICANT && !humidityMayExplain();
    }

    /**
     * Whether chance would bring it less than once in twenty times if nothing else had been asked.
     *
     * @return true if the probability of the figures in the common air is below 5 %
     */
    public boolean convincesAlone() {
        return corrected.test().probability() < SIGNIFICANT;
    }

    /**
     * Whether humidity, of which it is not known better how far it moves this, may be all there is to it.
     *
     * @return true if what the line makes of the whole time is within {@link #humidityLimit}
     */
    public boolean humidityMayExplain() {
        return Math.abs(inAll()) <= humidityLimit;
    }

    /**
     * What the line makes of the whole time.
     *
     * @return slope times months, in the figure's unit
     */
    public double inAll() {
        return corrected.slope().slope() * months;
    }

    /**
     * Whether it is more than setting up again explains.
     *
     * @return true if what the line makes of the whole time is beyond {@link #setUpLimit}
     */
    public boolean exceedsSettingUp() {
        return Math.abs(inAll()) > setUpLimit;
    }

    Drift adjusted(double probability) {
        return new Drift(measured, corrected, regression, months, setUpLimit, humidityLimit, probability);
    }
}
