package io.github.tapwright.cli;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.Picture;
import io.github.tapwright.instrument.RefusedEntryException;
import java.nio.file.Path;
import java.util.Optional;

/** Refuses a picture's name before an analysis is made for it. */
final class PictureOption {

    private PictureOption() {}

    static void check(Path file) {
        try {
            ChartFile.requireKnownEnding(file);
        } catch (IllegalArgumentException e) {
            throw new RefusedEntryException(String.valueOf(e.getMessage()));
        }
    }

    /** A picture that may have turned out to have nothing in it. */
    record Drawn(Optional<? extends Picture> picture) {

        /** Writes it and says so, or says why there is none. */
        void write(Path file, Terminal terminal, String whyNone) {
            picture.ifPresent(p -> Output.to(file, () -> ChartFile.write(p, file)));
            terminal.note(picture.isPresent() ? "wrote " + file : "no picture written, because " + whyNone);
        }
    }
}
