package io.github.tapwright.cli;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.trend.Drift;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.HistoryWords;
import io.github.tapwright.comparison.trend.HumidityRegression;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.comparison.trend.TrendWords;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.List;

/** An instrument over time, for people: what was done, the figures of each sitting, the drifts, the words. */
final class HistoryText {

    private final Terminal terminal;
    private final ZoneId zone;

    HistoryText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    void print(History history) {
        terminal.say("Instrument %s over time", history.instrument());
        history.leftOut().forEach(l -> terminal.say("  sitting %s left out: %s", l.sitting(), l.reason()));
        if (history.series().isEmpty()) {
            terminal.say("There is %s.", TrendWords.NOTHING);
            return;
        }
        printSittings(history);
        printFigures(history);
        printDrifts(history);
        printWords(history);
    }

    private void printSittings(History history) {
        Table table = new Table("sitting", "taken", "humidity (%)", "temperature (°C)", "stage");
        for (SittingOutline s : history.sittings()) {
            table.add(
                    s.id().toString(),
                    s.takenAt().text(zone),
                    s.conditions()
                            .air()
                            .relativeHumidityPercent()
                            .map(Figures::plain)
                            .orElse("unknown"),
                    s.conditions()
                            .air()
                            .temperatureCelsius()
                            .map(Figures::plain)
                            .orElse("unknown"),
                    s.conditions().stage().map(Stage::words).orElse("unknown"));
        }
        table.lines().forEach(terminal.out()::println);
        history.events().forEach(e -> terminal.say("  %s: %s", e.day(), e.what()));
    }

    private void printFigures(History history) {
        terminal.say("%nFigures, as measured → in %s, ± half the%n%s", HistoryWords.air(history), HistoryWords.BARS);
        for (Series series : history.series()) {
            StringBuilder line = new StringBuilder();
            series.figures()
                    .forEach(f -> line.append(line.isEmpty() ? "" : ", ").append(figure(series, f, history)));
            terminal.say("  %s: %s", series.subject().wordsWithUnit(), line);
        }
        HistoryWords.humidity(history).ifPresent(words -> terminal.say("  %s", words));
    }

    private static String figure(Series series, SittingFigure f, History history) {
        String corrected = HistoryWords.corrected(series, f, history);
        return f.correction().isEmpty() ? corrected : HistoryWords.measured(series, f) + " → " + corrected;
    }

    private void printDrifts(History history) {
        List<Series> drifts =
                history.series().stream().filter(s -> s.drift().isPresent()).toList();
        if (drifts.isEmpty()) {
            return;
        }
        terminal.say("%nDrift a month %s (95 %% interval; p of a drift)", TrendWords.stretch(history));
        Table table = new Table(
                "days",
                "as measured",
                "p",
                "in the common air",
                "p",
                "with humidity beside time",
                "all asked",
                "quantity");
        for (Series s : drifts) {
            s.drift().ifPresent(d -> table.add(row(s, d)));
        }
        table.lines().forEach(terminal.out()::println);
    }

    private static String[] row(Series s, Drift d) {
        return new String[] {
            Integer.toString(s.daysInStretch()),
            line(d.measured()),
            figure(d.measured().test().probability()),
            line(d.corrected()),
            figure(d.corrected().test().probability()),
            d.regression()
                    .map(HumidityRegression::perMonth)
                    .map(Figures::difference)
                    .orElse("–"),
            figure(d.adjustedProbability()),
            s.subject().words()
        };
    }

    private static String line(Drift.Line line) {
        return line.slope()
                .interval()
                .map(Figures::interval)
                .orElseGet(() -> Figures.text(line.slope().slope(), 3));
    }

    private static String figure(double probability) {
        return Figures.probability(probability);
    }

    private void printWords(History history) {
        terminal.say("%nIn words");
        boolean asked = history.questions() > 0;
        if (asked) {
            history.series().forEach(s -> terminal.say("  - %s", TrendWords.sentence(s, history)));
        } else {
            history.longest()
                    .ifPresent(longest -> terminal.say(
                            "  - cannot tell whether anything drifts: sittings %s",
                            TrendWords.tooFew(history, longest)));
        }
        history.warnings().forEach(w -> terminal.say("  - mind: %s", w));
        terminal.say("%n%s", TrendWords.CAUTION);
    }
}
