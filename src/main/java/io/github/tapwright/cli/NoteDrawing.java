package io.github.tapwright.cli;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.NotePicture;
import io.github.tapwright.chart.NotePicture.Stem;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Partial;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** From a note to a picture of its partials. */
final class NoteDrawing {

    private NoteDrawing() {}

    /** Writes the picture; false, and no file, if there are no partials. */
    static boolean write(String name, NoteResult result, Path file) throws IOException {
        if (result.partials().isEmpty()) {
            return false;
        }
        String pitch = result.pitch()
                .found()
                .map(p -> Figures.text(p.hz()) + " Hz, " + p.nearest())
                .orElse("no pitch");
        ChartFile.write(
                new NotePicture(
                        "Partials of a plucked note",
                        List.of(Path.of(name).getFileName() + ": " + pitch),
                        result.partials().stream().map(NoteDrawing::stem).toList()),
                file);
        return true;
    }

    private static Stem stem(Partial p) {
        return new Stem(
                p.frequencyHz().value(),
                p.levelDb().value(),
                p.decay().early().map(Estimate::value),
                p.decay().late().map(Estimate::value));
    }
}
