package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.statistics.MannKendall;
import io.github.tapwright.statistics.TheilSen;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Whether one quantity drifts, as measured and in the common air.
 *
 * <p>Slope by Theil and Sen per month of 30.44 days, probability by Mann and Kendall, exact up to twenty sittings at different
 * times. The verdict rests on the figures in the common air and the adjusted probability.
 *
 * @param measured of the figures as measured
 * @param corrected of the figures in the common air
 * @param regression with humidity beside time; empty where that cannot be asked
 * @param months from first to last figure
 * @param setUpLimit what two set-ups of an unchanged body differ by at most, 19 times of 20, in the figure's unit
 * @param adjustedProbability made larger for all questions asked at once
 */
public record Drift(
        Line measured,
        Line corrected,
        Optional<HumidityRegression> regression,
        double months,
        double setUpLimit,
        double adjustedProbability) {

    /** With four or fewer no drift can be shown at 5 % [Kendall1975]. */
    public static final int FEWEST = 5;

    private static final double SIGNIFICANT = 0.05;
    private static final double DAYS_A_MONTH = 30.44;
    private static final double SECONDS_A_MONTH =
            DAYS_A_MONTH * Duration.ofDays(1).toSeconds();

    /**
     * A robust line with its test.
     *
     * @param slope by Theil and Sen, per month
     * @param test by Mann and Kendall
     */
    public record Line(TheilSen slope, MannKendall test) {}

    /** Empty with too few figures, or all of one moment. */
    static Optional<Drift> of(Subject subject, List<SittingFigure> figures, SetUpSpread spread) {
        double[] months = months(figures);
        if (figures.size() < FEWEST || months[months.length - 1] <= 0) {
            return Optional.empty();
        }
        Line corrected = line(months, figures, SittingFigure::corrected);
        double middle =
                figures.stream().mapToDouble(SittingFigure::corrected).average().orElseThrow();
        return Optional.of(new Drift(
                line(months, figures, SittingFigure::measured),
                corrected,
                HumidityRegression.of(months, figures),
                months[months.length - 1],
                spread.limit95(subject.quantity(), middle),
                corrected.test().probability()));
    }

    /** Since the first figure. */
    static double[] months(List<SittingFigure> figures) {
        return figures.stream()
                .mapToDouble(f -> Duration.between(
                                        figures.get(0).takenAt().instant(),
                                        f.takenAt().instant())
                                .toSeconds()
                        / SECONDS_A_MONTH)
                .toArray();
    }

    private static Line line(double[] months, List<SittingFigure> figures, ToDoubleFunction<SittingFigure> of) {
        double[] values = figures.stream().mapToDouble(of).toArray();
        return new Line(TheilSen.of(months, values), MannKendall.of(months, values));
    }

    /**
     * Whether it drifts, all questions considered.
     *
     * @return true if the adjusted probability is below 5 %
     */
    public boolean drifts() {
        return adjustedProbability < SIGNIFICANT;
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
        return new Drift(measured, corrected, regression, months, setUpLimit, probability);
    }
}
