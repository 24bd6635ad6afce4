package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.InWords;
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

    /** What is said where there is nothing to follow; "there is" goes before. */
    public static final String NOTHING = "no sitting with a named resonance or with plucks that may be compared";

    private TrendWords() {}

    /**
     * One sentence.
     *
     * @param series the quantity
     * @param history whose it is
     * @return such as "main top, frequency: rises by 0.94 Hz a month (0.71 to 1.18), 6.6 Hz in all …"
     */
    public static String sentence(Series series, History history) {
        Subject subject = series.subject();
        return series.drift()
                .map(d -> said(subject, d, history))
                .orElseGet(() -> subject.words() + ": cannot tell, sittings " + tooFew(history, series));
    }

    private static String said(Subject subject, Drift d, History history) {
        String name = subject.words() + ": ";
        if (d.drifts()) {
            return name + drifts(subject, d, history);
        }
        if (d.convincesAlone()) {
            return "perhaps " + name + perhaps(subject, d) + besideHumidity(subject, d);
        }
        return name + cannotTell(subject, d, history) + besideHumidity(subject, d);
    }

    /** Zero is left out, and yet it does not convince: humidity may explain it, or too much was asked at once. */
    private static String perhaps(Subject subject, Drift d) {
        double slope = d.corrected().slope().slope();
        String why = d.humidityMayExplain()
                ? "humidity ran with time, and nobody knows its effect well enough to say that it is not all of it (up to "
                        + amount(d.humidityLimit(), d.humidityLimit()) + unit(subject) + ")"
                : doubt(subject, d);
        return direction(slope) + " by "
                + perMonth(slope, subject, d.corrected().slope().interval()) + ": " + why;
    }

    private static String doubt(Subject subject, Drift d) {
        double alone = d.corrected().test().probability();
        return isQAgain(subject)
                ? "p " + Figures.probabilityAfterP(alone)
                        + " by itself, but it follows from Q and frequency, and its Q does not convince (p "
                        + Figures.probabilityAfterP(d.adjustedProbability()) + ")"
                : InWords.doubt(alone, d.adjustedProbability());
    }

    /** The slope with humidity taken out by the figures themselves, where that says more than the figures in the common air. */
    private static String besideHumidity(Subject subject, Drift d) {
        return d.regression()
                .map(HumidityRegression::perMonth)
                .filter(b -> b.differsFromZero() && !isQAgain(subject))
                .map(
                        b -> "; with humidity beside time it " + direction(b.value()) + " by "
                                + perMonth(b.value(), subject, Optional.of(b.interval95()))
                                + ", convincing if it were the only question: humidity may hide a drift here, go on through another season")
                .orElse("");
    }

    private static String direction(double slope) {
        return slope > 0 ? "rises" : "falls";
    }

    private static boolean isQAgain(Subject subject) {
        return subject.quantity() == Quantity.DECAY_TIME;
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
        return direction(slope) + " by "
                + perMonth(slope, subject, d.corrected().slope().interval())
                + ", " + all + unit(subject) + " in all, " + corrected(subject, d, history) + "; "
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
        return "no drift to be told, "
                + d.corrected()
                        .slope()
                        .interval()
                        .map(i -> "it may be anything from " + Figures.interval(i) + unit(subject) + " a month, ")
                        .orElse("")
                + corrected(subject, d, history);
    }

    private static String corrected(Subject subject, Drift d, History history) {
        return (isQAgain(subject) ? "no question of its own, as it follows from Q and frequency; " : "")
                + "after correction for " + Figures.count(history.questions(), "question") + " asked at once p "
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
