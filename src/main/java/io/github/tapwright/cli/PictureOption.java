package io.github.tapwright.cli;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.instrument.RefusedEntryException;
import java.nio.file.Path;

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
}
