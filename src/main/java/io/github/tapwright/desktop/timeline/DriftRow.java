package io.github.tapwright.desktop.timeline;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.trend.Drift;
import io.github.tapwright.comparison.trend.HumidityRegression;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.statistics.Figures;
import java.util.function.Function;

/**
 * One quantity over time, as the table shows it.
 *
 * @param series its figures and its drift
 */
public record DriftRow(Series series) {

    private static final String NONE = "–";

    /**
     * Whose figure, which and in what unit a month.
     *
     * @return in words
     */
    public String figure() {
        Quantity quantity = series.subject().quantity();
        return series.subject().words() + (quantity.unit().isEmpty() ? "" : " (" + quantity.unit() + ")");
    }

    String sittings() {
        return series.inStretch() + " of " + series.figures().size();
    }

    /** First and last figure of the stretch, in the common air. */
    String fromTo() {
        int places = series.subject().quantity() == Quantity.DECAY_TIME ? 3 : 1;
        return series.inStretch() == 0
                ? NONE
                : Figures.text(series.stretch().get(0).corrected(), places) + " → "
                        + Figures.text(
                                series.stretch().get(series.inStretch() - 1).corrected(), places);
    }

    /**
     * Drift a month as measured.
     *
     * @return its 95 % interval; a dash where there are too few sittings
     */
    public String measured() {
        return of(d -> line(d.measured()));
    }

    String measuredProbability() {
        return of(d -> probability(d.measured().test().probability()));
    }

    /**
     * Drift a month in the common air.
     *
     * @return its 95 % interval; a dash where there are too few sittings
     */
    public String corrected() {
        return of(d -> line(d.corrected()));
    }

    String correctedProbability() {
        return of(d -> probability(d.corrected().test().probability()));
    }

    String besideHumidity() {
        return series.drift()
                .flatMap(Drift::regression)
                .map(HumidityRegression::perMonth)
                .map(Figures::difference)
                .orElse(NONE);
    }

    String adjustedProbability() {
        return of(d -> probability(d.adjustedProbability()));
    }

    /**
     * The verdict, with a sign of its own.
     *
     * @return a sign and words
     */
    public String verdict() {
        return series.drift().map(DriftRow::verdict).orElse("– too few");
    }

    private static String verdict(Drift drift) {
        if (!drift.drifts()) {
            return "? cannot tell";
        }
        String way = drift.corrected().slope().slope() > 0 ? "↗ rises" : "↘ falls";
        return drift.exceedsSettingUp() ? way : way + ", no more than setting up";
    }

    private String of(Function<Drift, String> words) {
        return series.drift().map(words).orElse(NONE);
    }

    private static String probability(double probability) {
        return Figures.probability(probability);
    }

    private static String line(Drift.Line line) {
        return line.slope()
                .interval()
                .map(Figures::interval)
                .orElseGet(() -> Figures.text(line.slope().slope(), 3));
    }
}
