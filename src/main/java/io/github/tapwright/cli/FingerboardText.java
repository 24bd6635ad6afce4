package io.github.tapwright.cli;

import io.github.tapwright.note.Finding;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.NearResonance;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.statistics.Figures;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A run of notes for people: what stands out, then the maps, then every note. */
final class FingerboardText {

    private static final String NONE = "–";

    private final Terminal terminal;

    FingerboardText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(List<String> files, Fingerboard board, List<ShownResonance> resonances) {
        printSummary(board, resonances);
        if (placed(board) > 0) {
            Tuning tuning = board.settings().tuning();
            printMap("Early decay time (s for 60 dB)", board, Fingerboard.Note::earlyDecayTimeSeconds, 1);
            printMap("Decay time (s for 60 dB, T30 or T20)", board, Fingerboard.Note::decayTimeSeconds, 1);
            printMap(
                    "Level LAFmax (dB re full scale; the pluck's strength is in it)",
                    board,
                    Fingerboard.Note::lafMaxDb,
                    1);
            printMap("Pitch off the fret (cents)", board, n -> n.pitchErrorCents(tuning), 0);
            printMap("Spectral centroid (Hz)", board, n -> n.result().spectralCentroidHz(), 0);
        }
        printNotes(files, board);
        if (!board.warnings().isEmpty()) {
            terminal.say("%nWarnings");
            board.warnings().forEach(w -> terminal.say("  - %s", w));
        }
    }

    /** How many notes there are, and which of them die away too fast. */
    void printSummary(Fingerboard board, List<ShownResonance> resonances) {
        terminal.say(
                "%s found, %d of them notes on the fingerboard",
                Figures.count(board.notes().size(), "attack"), placed(board));
        printFast(board, resonances);
    }

    private static long placed(Fingerboard board) {
        return board.notes().stream().filter(n -> n.place().isPresent()).count();
    }

    private void printFast(Fingerboard board, List<ShownResonance> resonances) {
        if (board.judged() == 0) {
            terminal.say(
                    "No note could be judged for dying away too fast: that takes an early decay time of the note and of four");
            terminal.say("others within four frets on the same string.");
            return;
        }
        if (board.fastDecays().isEmpty()) {
            terminal.say(
                    "None of the %d places that could be judged dies away much faster than its neighbours.",
                    board.judged());
            return;
        }
        terminal.say("%nDying away much faster than the frets around (%d places could be judged)", board.judged());
        Tuning tuning = board.settings().tuning();
        for (FastDecay f : board.fastDecays()) {
            terminal.say(
                    "  string %d, fret %d (%s Hz): %s s where %s s are usual%s",
                    f.place().string(),
                    f.place().fret(),
                    Figures.text(tuning.hz(f.place()), 1),
                    Figures.text(f.decayTimeSeconds(), 2),
                    Figures.text(f.usualSeconds(), 2),
                    NearResonance.of(f, tuning, resonances)
                            .map(FingerboardText::because)
                            .orElse(""));
        }
    }

    private static String because(NearResonance r) {
        return "; near the body's " + r.name().orElse("resonance") + " at "
                + Figures.text(r.frequencyHz().value(), 1) + " Hz";
    }

    private void printMap(
            String title, Fingerboard board, Function<Fingerboard.Note, Finding<Double>> value, int places) {
        Map<Fret, String> cells = new HashMap<>();
        MissingFigures reasons = new MissingFigures();
        int highest = 0;
        for (Fingerboard.Note note : board.notes()) {
            if (note.place().isPresent()) {
                Fret at = note.place().get();
                highest = Math.max(highest, at.fret());
                Finding<Double> here = value.apply(note);
                cells.put(at, here.found().map(v -> Figures.text(v, places)).orElse(NONE));
                here.refusal().ifPresent(why -> reasons.add(why, at));
            }
        }
        terminal.say("%n%s", title);
        String[] header = new String[highest + 2];
        header[0] = "string \\ fret";
        for (int fret = 0; fret <= highest; fret++) {
            header[fret + 1] = Integer.toString(fret);
        }
        Table table = new Table(header);
        for (int string = 1; string <= board.settings().tuning().openHz().size(); string++) {
            String[] row = new String[highest + 2];
            row[0] = Integer.toString(string);
            for (int fret = 0; fret <= highest; fret++) {
                row[fret + 1] = cells.getOrDefault(new Fret(string, fret), "");
            }
            table.add(row);
        }
        table.lines().forEach(terminal.out()::println);
        reasons.lines().forEach(terminal.out()::println);
    }

    private void printNotes(List<String> files, Fingerboard board) {
        if (board.notes().isEmpty()) {
            return;
        }
        terminal.say("%nNotes in the order played (± one standard uncertainty)");
        MissingFigures reasons = new MissingFigures();
        Table table = new Table("no.", "time (s)", "string", "fret", "pitch (Hz)", "decay (s)", "file");
        for (int i = 0; i < board.notes().size(); i++) {
            Fingerboard.Note note = board.notes().get(i);
            String number = "no. " + (i + 1);
            note.whyNoPlace().ifPresent(why -> reasons.add("no place: " + why, number));
            if (note.place().isEmpty()) {
                note.decayTimeSeconds().refusal().ifPresent(why -> reasons.add("no decay time: " + why, number));
            }
            table.add(
                    Integer.toString(i + 1),
                    Figures.text(note.attackSeconds(), 2),
                    note.place().map(p -> Integer.toString(p.string())).orElse(NONE),
                    note.place().map(p -> Integer.toString(p.fret())).orElse(NONE),
                    note.result()
                            .pitch()
                            .found()
                            .map(Pitch::hz)
                            .map(Figures::text)
                            .orElse("no pitch"),
                    note.result()
                            .decay()
                            .decayTime()
                            .found()
                            .map(d -> Figures.text(d.seconds()) + " " + d.range())
                            .orElse(NONE),
                    files.get(note.file()));
        }
        table.lines().forEach(terminal.out()::println);
        reasons.lines().forEach(terminal.out()::println);
        if (board.notes().stream()
                .anyMatch(n ->
                        n.place().isPresent() && n.decayTimeSeconds().found().isEmpty())) {
            terminal.say("  – in the column of decay times: the reasons stand below their map");
        }
    }
}
