package io.github.tapwright.report.picture;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.Mark;
import io.github.tapwright.chart.ResponsePicture;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.Strike;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A picture of response curves, built up analysis by analysis. */
public final class CurvePicture {

    private final String title;
    private final List<String> subtitles = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();

    /**
     * A picture without a curve yet.
     *
     * @param title what was measured
     */
    public CurvePicture(String title) {
        this.title = title;
    }

    /**
     * A resonance as a picture marks it.
     *
     * @param resonance the numbers
     * @param name the name that holds; empty if there is none
     * @return its mark
     */
    public static Mark mark(Resonance resonance, Optional<String> name) {
        return new Mark(
                resonance.frequencyHz().value(), name.orElse(""), Figures.text(resonance.frequencyHz()) + " Hz");
    }

    /**
     * The resonances of a sitting's latest analysis as a picture marks them.
     *
     * @param sitting of taps
     * @return lowest first
     */
    public static List<Mark> marks(Sitting sitting) {
        return sitting.resonances(sitting.latest()).stream()
                .map(r -> mark(r.found().resonance(), r.name()))
                .toList();
    }

    /**
     * The named resonances alone, with rounded figures, for readers who look for names.
     *
     * @param sitting of taps
     * @return lowest first
     */
    public static List<Mark> namedMarks(Sitting sitting) {
        return sitting.resonances(sitting.latest()).stream()
                .filter(r -> r.name().isPresent())
                .map(r -> namedMark(
                        r.found().resonance().frequencyHz().value(), r.name().orElse("")))
                .toList();
    }

    private static Mark namedMark(double frequencyHz, String name) {
        return new Mark(frequencyHz, name, Figures.text(frequencyHz, 1) + " Hz");
    }

    /**
     * Adds a line below the title.
     *
     * @param line one line of text
     */
    public void subtitle(String line) {
        subtitles.add(line);
    }

    /**
     * Adds the curve of a sitting's latest analysis, if it has one.
     *
     * @param label what the legend calls it
     * @param sitting of taps
     */
    public void add(String label, Sitting sitting) {
        sitting.latest().taps().ifPresent(result -> add(label, result, marks(sitting)));
    }

    /**
     * Adds the curve of an analysis, if it has one.
     *
     * @param label what the legend calls it
     * @param result the analysis
     * @param marks its resonances
     */
    public void add(String label, TapResult result, List<Mark> marks) {
        result.curve().ifPresent(curve -> {
            traces.add(new Trace(label, curve, marks));
            subtitles.add(label + ": " + summary(result, curve));
        });
    }

    /**
     * The picture.
     *
     * @return empty if there is no curve to draw
     */
    public Optional<ResponsePicture> picture() {
        return traces.isEmpty() ? Optional.empty() : Optional.of(new ResponsePicture(title, subtitles, traces));
    }

    /**
     * The picture for a page that says itself what it shows: without title and lines below it.
     *
     * @return empty if there is no curve to draw
     */
    public Optional<ResponsePicture> onPage() {
        return picture().map(p -> new ResponsePicture("", List.of(), p.traces()));
    }

    /**
     * Writes the picture.
     *
     * @param file ends in ".png" or ".svg"
     * @return false if there is no curve to draw, and then no file is written
     * @throws IOException if the file cannot be written
     */
    public boolean write(Path file) throws IOException {
        Optional<ResponsePicture> picture = picture();
        if (picture.isPresent()) {
            ChartFile.write(picture.get(), file);
        }
        return picture.isPresent();
    }

    private static String summary(TapResult result, ResponseCurve curve) {
        long used = result.strikes().stream().filter(Strike::used).count();
        return used + " of " + Figures.count(result.strikes().size(), "strike") + " used, resolution "
                + Figures.text(curve.resolutionHz(), 1) + " Hz";
    }
}
