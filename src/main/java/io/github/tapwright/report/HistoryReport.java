package io.github.tapwright.report;

import io.github.tapwright.chart.TrendPicture;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.trend.Event;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.HistoryWords;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.comparison.trend.TrendWords;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.report.picture.HistoryPictures;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An instrument over time. */
final class HistoryReport {

    private final History history;
    private final ZoneId zone;

    HistoryReport(History history, ZoneId zone) {
        this.history = history;
        this.zone = zone;
    }

    Draft draft() {
        Pictures pictures = new Pictures();
        List<Section> sections = new ArrayList<>();
        sections.add(words());
        HistoryPictures.of(history, zone)
                .map(p -> new TrendPicture("", List.of(), p.panels(), p.humidity(), p.events(), p.zone()))
                .ifPresent(
                        p -> sections.add(
                                Section.of(
                                        "Over time",
                                        pictures.figure(
                                                p,
                                                "Change of each resonance over time, the room's humidity below",
                                                "Change since the first sitting"
                                                        + history.since()
                                                                .map(e -> " since " + e)
                                                                .orElse("")
                                                        + ". Lines: in " + HistoryWords.air(history)
                                                        + "; hollow marks: as measured. Bars: " + HistoryWords.BARS
                                                        + "; "
                                                        + HistoryWords.settingUp(history)
                                                        + ". Figures of one sitting stand side by side. Upright lines: what was done to the instrument, after which its figures start anew."))));
        if (!history.series().isEmpty()) {
            sections.add(figures());
        }
        sections.add(sittings());
        sections.add(Section.of("What this cannot tell", Words.paragraph(TrendWords.CAUTION)));
        sections.add(Cautions.section());
        String lead = Figures.count(history.sittings().size(), "sitting") + " used, "
                + history.leftOut().size() + " left out";
        return new Draft(
                "Guitar " + history.instrument() + " over time",
                List.of(lead),
                sections,
                pictures,
                history.series().isEmpty() ? Optional.of(nothing()) : Optional.empty());
    }

    private String nothing() {
        int leftOut = history.leftOut().size();
        return "there is " + TrendWords.NOTHING
                + (leftOut == 0
                        ? ""
                        : "; the reason for " + Figures.count(leftOut, "sitting") + " left out stands in the report");
    }

    private Section words() {
        List<String> lines = new ArrayList<>();
        if (history.series().isEmpty()) {
            lines.add("There is " + TrendWords.NOTHING + ".");
        } else if (history.questions() > 0) {
            history.series().forEach(s -> lines.add(TrendWords.sentence(s, history)));
        } else {
            history.longest()
                    .ifPresent(longest -> lines.add(
                            "cannot tell whether anything drifts: sittings " + TrendWords.tooFew(history, longest)));
        }
        history.warnings().forEach(w -> lines.add("mind: " + w));
        return Section.of("In words", Words.list(lines));
    }

    private Section figures() {
        List<Node> content = new ArrayList<>();
        Grid grid = Grid.of("quantity|", "sitting", "as measured", "in the common air ±");
        for (Series s : history.series()) {
            for (SittingFigure f : s.figures()) {
                grid.add(
                        s.subject().wordsWithUnit(),
                        f.sitting().toString(),
                        HistoryWords.measured(s, f),
                        HistoryWords.corrected(s, f, history));
            }
        }
        content.add(grid.element());
        content.add(Words.quiet("In " + HistoryWords.air(history) + ", ± half the " + HistoryWords.BARS + "; "
                + HistoryWords.settingUp(history)
                + HistoryWords.humidity(history).map(h -> "; " + h).orElse("") + "."));
        return new Section("Figures", content);
    }

    private Section sittings() {
        Grid grid = Grid.of("sitting", "taken|", "humidity (%)", "temperature (°C)", "stage|");
        for (SittingOutline s : history.sittings()) {
            grid.add(
                    s.id().toString(),
                    s.takenAt().text(zone),
                    figure(s.conditions().air().relativeHumidityPercent()),
                    figure(s.conditions().air().temperatureCelsius()),
                    s.conditions().stage().map(Stage::words).orElse("unknown"));
        }
        List<Node> content = new ArrayList<>(List.of(grid.element()));
        List<String> lines = new ArrayList<>();
        history.events().stream().map(Event::toString).forEach(lines::add);
        history.leftOut().forEach(l -> lines.add("sitting " + l.sitting() + " left out: " + l.reason()));
        if (!lines.isEmpty()) {
            content.add(Words.list(lines));
        }
        return new Section("Sittings", content);
    }

    private static String figure(Optional<Double> value) {
        return value.map(Figures::plain).orElse("unknown");
    }
}
