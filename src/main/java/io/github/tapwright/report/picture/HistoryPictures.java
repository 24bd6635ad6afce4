package io.github.tapwright.report.picture;

import io.github.tapwright.chart.TrendPicture;
import io.github.tapwright.chart.TrendPicture.Dot;
import io.github.tapwright.chart.TrendPicture.Line;
import io.github.tapwright.chart.TrendPicture.Panel;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.HistoryWords;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.statistics.Estimate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A picture of an instrument's history, each figure relative to the first of its stretch. */
public final class HistoryPictures {

    private final History history;
    private final ZoneId zone;

    private HistoryPictures(History history, ZoneId zone) {
        this.history = history;
        this.zone = zone;
    }

    /**
     * An instrument's history, each figure relative to the first of its stretch.
     *
     * @param history whose
     * @param zone where the workshop is
     * @return empty if there is nothing to draw
     */
    public static Optional<TrendPicture> of(History history, ZoneId zone) {
        return new HistoryPictures(history, zone).picture();
    }

    private Optional<TrendPicture> picture() {
        List<Panel> panels = new ArrayList<>();
        add(Quantity.FREQUENCY, "Frequency (%)", panels);
        add(Quantity.Q, "Q (%)", panels);
        add(Quantity.LEVEL, "Plucks (dB)", panels);
        return panels.isEmpty()
                ? Optional.empty()
                : Optional.of(new TrendPicture(
                        "Instrument " + history.instrument() + " over time",
                        subtitles(),
                        panels,
                        humidity(),
                        events(),
                        zone));
    }

    private List<String> subtitles() {
        return List.of(
                "change against the first sitting"
                        + history.since().map(e -> " since " + e).orElse("")
                        + "; lines: in " + HistoryWords.air(history) + "; hollow marks: as measured",
                "bars: " + HistoryWords.BARS + "; figures of one sitting stand side by side",
                HistoryWords.settingUp(history));
    }

    private void add(Quantity quantity, String axis, List<Panel> panels) {
        List<Line> lines = history.series().stream()
                .filter(s -> s.subject().quantity() == quantity)
                .map(this::line)
                .toList();
        if (!lines.isEmpty()) {
            panels.add(new Panel(axis, lines));
        }
    }

    private Line line(Series series) {
        SittingFigure reference = series.inStretch() > 0
                ? series.stretch().get(0)
                : series.figures().get(series.figures().size() - 1);
        int style = series.subject()
                .resonance()
                .map(m -> List.of(ModeName.values()).indexOf(m))
                .orElse(0);
        boolean corrected = series.figures().stream().anyMatch(f -> f.corrected() != f.measured());
        return new Line(
                series.subject().whose(),
                style,
                dots(series, reference, f -> f.inCommonAir(series.subject(), history.bench())),
                corrected ? dots(series, reference, f -> Estimate.of(f.measured(), 0)) : List.of());
    }

    private static List<Dot> dots(Series series, SittingFigure reference, Function<SittingFigure, Estimate> of) {
        double first = reference.corrected();
        boolean level = series.subject().quantity() == Quantity.LEVEL;
        double scale = level ? 1 : 100 / first;
        return series.figures().stream()
                .map(f -> {
                    Estimate figure = of.apply(f);
                    return new Dot(
                            f.takenAt().instant(), scale * (figure.value() - first), scale * figure.halfWidth95());
                })
                .toList();
    }

    private List<Dot> humidity() {
        return history.sittings().stream()
                .flatMap(s -> s.conditions().air().relativeHumidityPercent().stream()
                        .map(h -> new Dot(s.takenAt().instant(), h)))
                .toList();
    }

    private List<TrendPicture.Happening> events() {
        return history.events().stream()
                .map(e -> new TrendPicture.Happening(e.at(), e.what()))
                .toList();
    }
}
