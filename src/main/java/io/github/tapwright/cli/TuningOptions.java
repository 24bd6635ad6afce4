package io.github.tapwright.cli;

import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.Tuning;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What the open strings sound and how many frets there are. */
final class TuningOptions {

    @Option(
            names = "--tuning",
            paramLabel = "NOTES",
            description = "Open strings from the lowest up, such as E2,A2,D3,G3,B3,E4, which holds if left out.")
    private Optional<String> notes = Optional.empty();

    @Option(names = "--frets", paramLabel = "N", description = "Run of notes: number of frets; 19 if left out.")
    private Optional<Integer> frets = Optional.empty();

    @Option(names = "--a4", paramLabel = "HZ", description = "Tuning note A4; 440 if left out.")
    private Optional<Double> a4Hz = Optional.empty();

    boolean isGiven() {
        return notes.isPresent() || frets.isPresent() || a4Hz.isPresent();
    }

    /** Open strings alone need no frets. */
    void refuseFrets() {
        Given.refuse(frets.isPresent(), "--frets is for a run of notes; plucks are of open strings, leave it out");
    }

    private double a4Hz() {
        return a4Hz.orElse(NoteSettings.STANDARD.a4Hz());
    }

    Tuning tuning() {
        return Checked.entry(() ->
                Tuning.named(notes.orElse(Tuning.CLASSICAL_NOTES), a4Hz(), frets.orElse(Tuning.CLASSICAL.fretCount())));
    }

    NoteSettings noteSettings() {
        return Checked.entry(() -> NoteSettings.STANDARD.withA4(a4Hz()));
    }
}
