package io.github.tapwright.cli;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.Mark;
import io.github.tapwright.chart.ResponsePicture;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.Strike;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A picture of response curves, built up analysis by analysis. */
final class CurvePicture {

    private final String title;
    private final List<String> subtitles = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();

    CurvePicture(String title) {
        this.title = title;
    }

    /** Adds a line below the title. */
    void subtitle(String line) {
        subtitles.add(line);
    }

    /** Adds the curve of a sitting's latest analysis, if it has one. */
    void add(String label, Sitting sitting) {
        sitting.latest().taps().ifPresent(result -> add(label, result, SittingText.lines(sitting, sitting.latest())));
    }

    /** Adds the curve of an analysis, if it has one. */
    void add(String label, TapResult result, List<ResultText.Line> resonances) {
        result.curve().ifPresent(curve -> {
            traces.add(new Trace(
                    label, curve, resonances.stream().map(CurvePicture::mark).toList()));
            subtitles.add(label + ": " + summary(result, curve));
        });
    }

    /**
     * Writes the picture.
     *
     * @return false if there is no curve to draw, and then no file is written
     */
    boolean write(Path file) throws IOException {
        if (traces.isEmpty()) {
            return false;
        }
        ChartFile.write(new ResponsePicture(title, subtitles, traces), file);
        return true;
    }

    private static String summary(TapResult result, ResponseCurve curve) {
        long used = result.strikes().stream().filter(Strike::used).count();
        return used + " of " + result.strikes().size() + " strikes used, resolution "
                + Figures.text(curve.resolutionHz(), 1) + " Hz";
    }

    private static Mark mark(ResultText.Line line) {
        return new Mark(
                line.resonance().frequencyHz().value(),
                line.name().orElse(""),
                Figures.text(line.resonance().frequencyHz(), 2) + " Hz");
    }
}
