package io.github.tapwright.cli;

import io.github.tapwright.note.NoteName;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.Tuning;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import picocli.CommandLine.Option;

/** What the open strings sound and how many frets there are. */
final class TuningOptions {

    @Option(
            names = "--tuning",
            paramLabel = "NOTES",
            description = "Open strings from the lowest up, such as E2,A2,D3,G3,B3,E4, which holds if left out.")
    private String notes = "E2,A2,D3,G3,B3,E4";

    @Option(names = "--frets", paramLabel = "N", description = "Number of frets; 19 if left out.")
    private int frets = Tuning.CLASSICAL.fretCount();

    @Option(names = "--a4", paramLabel = "HZ", description = "Tuning note A4; 440 if left out.")
    private double a4Hz = NoteSettings.STANDARD.a4Hz();

    Tuning tuning() {
        return Checked.entry(() -> {
            List<Double> openHz = new ArrayList<>();
            for (String name : notes.split(",", -1)) {
                openHz.add(NoteName.read(name)
                        .orElseThrow(() -> new IllegalArgumentException("'" + name
                                + "' is no note; give the open strings from the lowest up, such as E2,A2,D3,G3,B3,E4"))
                        .hz(a4Hz));
            }
            Collections.reverse(openHz);
            return new Tuning(openHz, frets);
        });
    }

    NoteSettings noteSettings() {
        return Checked.entry(() -> NoteSettings.STANDARD.withA4(a4Hz));
    }
}
