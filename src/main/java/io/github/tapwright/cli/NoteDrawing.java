package io.github.tapwright.cli;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.NotePicture;
import io.github.tapwright.chart.NotePicture.Stem;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.PartialDecay;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

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
        Optional<Double> early = Optional.empty();
        Optional<Double> late = Optional.empty();
        if (p.decay() instanceof PartialDecay.OneStage one) {
            early = Optional.of(one.decayTimeSeconds().value());
        } else if (p.decay() instanceof PartialDecay.TwoStage two) {
            early = Optional.of(two.earlyDecayTimeSeconds().value());
            late = Optional.of(two.lateDecayTimeSeconds().value());
        }
        return new Stem(p.frequencyHz().value(), p.levelDb().value(), early, late);
    }
}
