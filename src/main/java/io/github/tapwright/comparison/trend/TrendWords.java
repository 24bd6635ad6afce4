package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Interval;
import java.util.Optional;

/** A drift as a sentence for people, and what it does not show. */
public final class TrendWords {

    /** What no history of one instrument shows. */
    public static final String CAUTION =
            "A drift says that something changed, not why: wood, strings, weather and bench look alike here. Published comparisons"
                    + " mostly found nothing from playing-in: violins after three years (Inta and others 2005), guitars after"
                    + " vibration treatment (Clemens and others 2014). Whoever claims that an instrument opened up needs a control: a"
                    + " like instrument, not played, measured in the same sittings.";

    private TrendWords() {}

    /**
     * One sentence.
     *
     * @param series the quantity
     * @param history whose it is
     * @return such as "main top, frequency: rises by 0.94 Hz a month (0.71 to 1.18), 6.6 Hz in all …"
     */
    public static String sentence(Series series, History history) {
        String name = series.subject().words() + ": ";
        return name
                + series.drift()
                        .map(d -> d.drifts()
                                ? drifts(series.subject(), d, history)
                                : cannotTell(series.subject(), d, history))
                        .orElseGet(() -> "cannot tell, sittings " + tooFew(history, series));
    }

    /**
     * Why no drift can be sought.
     *
     * @param history whose
     * @param series with too few days in the stretch
     * @return such as "since 2024-10-12 (strings fitted): 3; it takes 5 at least"
     */
    public static String tooFew(History history, Series series) {
        int sittings = series.inStretch();
        int days = series.daysInStretch();
        String counted = stretch(history) + ": " + sittings;
        if (sittings < Drift.FEWEST) {
            return counted + "; it takes " + Drift.FEWEST + " at least, on different days";
        }
        return days == 1
                ? counted + ", all on one day: a drift needs sittings on several days, " + Drift.FEWEST + " at least"
                : counted + ", on " + days + " days; sittings of one day are one point in time, and it takes "
                        + Drift.FEWEST + " days at least";
    }

    /**
     * The stretch a drift is sought in.
     *
     * @param history whose
     * @return such as "since 2024-10-12 (strings fitted)" or "from the first sitting on"
     */
    public static String stretch(History history) {
        return history.since().map(e -> "since " + e).orElse("from the first sitting on");
    }

    private static String drifts(Subject subject, Drift d, History history) {
        double slope = d.corrected().slope().slope();
        String all = amount(Math.abs(d.inAll()), d.setUpLimit());
        return (slope > 0 ? "rises" : "falls") + " by "
                + perMonth(slope, subject, d.corrected().slope().interval())
                + ", " + all + unit(subject) + " in all, " + corrected(d, history) + "; "
                + (d.exceedsSettingUp()
                        ? "more than setting up again explains ("
                        : "no more than setting up again explains (")
                + amount(d.setUpLimit(), d.setUpLimit()) + unit(subject) + ", "
                + history.bench()
                        .spread(subject)
                        .known(subject.quantity())
                        .basis()
                        .words() + ")";
    }

    private static String perMonth(double slope, Subject subject, Optional<Interval> interval) {
        Optional<Interval> size = interval.map(i -> slope > 0 ? i : new Interval(-i.upper(), -i.lower()));
        double width = size.map(Interval::width).filter(w -> w > 0).orElse(Math.abs(slope));
        return amount(Math.abs(slope), width / 2) + unit(subject) + " a month"
                + size.map(i -> " (" + Figures.interval(i) + ")").orElse("");
    }

    private static String cannotTell(Subject subject, Drift d, History history) {
        double alone = d.corrected().test().probability();
        return "no drift to be told, "
                + d.corrected()
                        .slope()
                        .interval()
                        .map(i -> "it may be anything from " + Figures.interval(i) + unit(subject) + " a month, ")
                        .orElse("")
                + corrected(d, history)
                + (alone < 0.05 ? " (asked alone p " + Figures.probabilityAfterP(alone) + ")" : "");
    }

    private static String corrected(Drift d, History history) {
        return "after correction for " + Figures.count(history.questions(), "question") + " asked at once p "
                + Figures.probabilityAfterP(d.adjustedProbability());
    }

    private static String unit(Subject subject) {
        Quantity quantity = subject.quantity();
        return quantity.unit().isEmpty() ? "" : " " + quantity.unit();
    }

    /** To the second digit of the figure beside it. */
    private static String amount(double value, double beside) {
        int places = beside > 0 ? (int) Math.max(0, Math.min(6, 1 - Math.floor(Math.log10(beside)))) : 2;
        return Figures.text(value, places);
    }
}
