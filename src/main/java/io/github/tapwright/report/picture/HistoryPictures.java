package io.github.tapwright.report.picture;

import io.github.tapwright.chart.TrendPicture;
import io.github.tapwright.chart.TrendPicture.Dot;
import io.github.tapwright.chart.TrendPicture.Line;
import io.github.tapwright.chart.TrendPicture.Panel;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.mode.ModeName;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

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
        SetUpSpread spread = history.bench().spread();
        return List.of(
                "change against the first sitting"
                        + history.since().map(e -> " since " + e).orElse("")
                        + "; lines: in the common air; hollow marks: as measured",
                "setting up alone moves figures by " + spread.words(Quantity.FREQUENCY) + " of frequency and "
                        + spread.words(Quantity.Q) + " of Q (one standard deviation), "
                        + spread.basis().words());
    }

    private void add(Quantity quantity, String axis, List<Panel> panels) {
        List<Line> lines = history.series().stream()
                .filter(s -> s.subject().quantity() == quantity)
                .map(HistoryPictures::line)
                .toList();
        if (!lines.isEmpty()) {
            panels.add(new Panel(axis, lines));
        }
    }

    private static Line line(Series series) {
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
                dots(series, reference, SittingFigure::corrected),
                corrected ? dots(series, reference, SittingFigure::measured) : List.of());
    }

    private static List<Dot> dots(Series series, SittingFigure reference, ToDoubleFunction<SittingFigure> of) {
        double first = reference.corrected();
        boolean level = series.subject().quantity() == Quantity.LEVEL;
        return series.figures().stream()
                .map(f -> new Dot(
                        f.takenAt().instant(),
                        level ? of.applyAsDouble(f) - first : 100 * (of.applyAsDouble(f) / first - 1)))
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
