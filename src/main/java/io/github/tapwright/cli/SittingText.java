package io.github.tapwright.cli;

import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.report.picture.FingerboardMaps;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Figures;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A sitting with its conditions and its latest analysis, for people. */
final class SittingText {

    private static final String WITHDRAWN = """
            These are no sound pressure levels, and loudness in sone is left out. Measure them anew without the calibration:
              tapwright sitting reanalyse %s
            or by another: tapwright sitting reanalyse %s --calibrated-by ID""";

    private final Terminal terminal;
    private final ZoneId zone;

    SittingText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    /** Prints a sitting; a run of notes is held against the resonances of taps on the same instrument, if there are any. */
    void print(Sitting sitting, Optional<Sitting> taps) {
        terminal.say(
                "Sitting %s of instrument %s, %s",
                sitting.id(), sitting.instrument(), sitting.takenAt().text(zone));
        sitting.setAside()
                .ifPresent(why -> terminal.say(
                        "  set aside on %s: %s; nothing else uses it",
                        LocalDate.ofInstant(why.since(), zone), why.reason()));
        terminal.say("  %s", ConditionsText.line(sitting.conditions()));
        List<String> unknown = sitting.conditions().unknown();
        if (!unknown.isEmpty()) {
            terminal.say("  unknown: %s", String.join(", ", unknown));
        }
        sitting.recordings().forEach(this::print);
        Analysis analysis = sitting.latest();
        Findings findings = analysis.findings();
        findings.taps()
                .ifPresent(result -> new ResultText(terminal)
                        .print(files(sitting), result, lines(sitting, analysis), notices(sitting)));
        findings.notes().ifPresent(board -> print(sitting, board, taps));
        findings.plucks().ifPresent(run -> {
            PlucksText text = new PlucksText(terminal, run.levelUnit());
            text.print(run.meaningful(), List.of(), List.of());
            text.printRemarks(remarks(sitting));
            run.withdrawn().ifPresent(why -> terminal.say(WITHDRAWN, sitting.id(), sitting.id()));
        });
        terminal.say(
                "%nMethod %s, analysis %d of %d",
                analysis.methodVersion(), analysis.number(), sitting.analyses().size());
    }

    private void print(Sitting sitting, Fingerboard board, Optional<Sitting> taps) {
        List<ShownResonance> resonances =
                taps.map(t -> t.resonances(t.latest())).orElse(List.of());
        new FingerboardText(terminal).print(files(sitting), board, resonances);
        taps.filter(t -> !board.fastDecays().isEmpty())
                .ifPresent(t -> terminal.say("Resonances are those of the taps of sitting %s", t.id()));
    }

    /** Writes the response curve, or the maps of a run, of the latest analysis, if there is one. */
    void draw(Sitting sitting, Path file) {
        Optional<Fingerboard> board = sitting.latest().findings().notes();
        if (board.isPresent()) {
            new PictureOption.Drawn(FingerboardMaps.of(board.get())).write(file, terminal, "no note has a place");
            return;
        }
        CurvePicture picture = new CurvePicture("Instrument " + sitting.instrument() + ", response to taps");
        picture.subtitle(ConditionsText.line(sitting.conditions()));
        picture.add("sitting " + sitting.id(), sitting);
        boolean written = Output.tryTo(file, () -> picture.write(file));
        terminal.note(written ? "wrote " + file : "no picture written, because there is no curve to draw");
    }

    static List<ResultText.Line> lines(Sitting sitting, Analysis analysis) {
        return sitting.resonances(analysis).stream().map(ResultText.Line::of).toList();
    }

    private void print(KeptRecording recording) {
        terminal.say(
                "  %s: %s, %s kHz, %s s, SHA-256 %s…",
                recording.fileName(),
                recording.facts().format(),
                Figures.plain(recording.facts().sampleRateHz() / 1000),
                Figures.text(recording.facts().durationSeconds(), 1),
                recording.original().sha256().substring(0, 12));
    }

    private static List<String> files(Sitting sitting) {
        return sitting.recordings().stream().map(KeptRecording::fileName).toList();
    }

    private static List<String> remarks(Sitting sitting) {
        return sitting.recordings().stream()
                .flatMap(r -> r.facts().remarks().stream().map(n -> r.fileName() + ": " + n))
                .toList();
    }

    private static List<String> notices(Sitting sitting) {
        Stream<String> files = sitting.recordings().stream()
                .flatMap(r -> r.facts().notices().stream().map(n -> r.fileName() + ": " + n));
        Stream<String> names = sitting.unmatchedNames(sitting.latest()).stream()
                .map(g -> "the name “" + g.name().orElse("none") + "” was given at " + Figures.text(g.frequencyHz(), 1)
                        + " Hz, where this analysis finds no resonance");
        return Stream.concat(files, names).toList();
    }
}
