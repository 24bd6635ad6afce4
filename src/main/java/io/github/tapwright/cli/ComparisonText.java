package io.github.tapwright.cli;

import io.github.tapwright.comparison.Change;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingComparison;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;

/** Two sittings side by side, for people: first what was not the same, then the figures. */
final class ComparisonText {

    private final Terminal terminal;
    private final ZoneId zone;

    ComparisonText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    void print(Sitting before, Sitting after, SittingComparison comparison, SetUpSpread spread) {
        terminal.say("A: %s%nB: %s", label(before), label(after));
        List<String> differences = ConditionsText.differences(before.conditions(), after.conditions());
        terminal.say("%nNot the same in A and B, or not known%s", differences.isEmpty() ? ": nothing" : "");
        differences.forEach(d -> terminal.say("  - %s", d));
        if (!version(before).equals(version(after))) {
            terminal.say("  - method: %s / %s", version(before), version(after));
        }
        printChanges(comparison, spread);
        printAlone("A", comparison.onlyFirst());
        printAlone("B", comparison.onlySecond());
    }

    /** Writes both response curves into one picture. */
    void draw(Sitting before, Sitting after, Path file) throws IOException {
        CurvePicture picture = new CurvePicture("Response to taps, two sittings");
        for (Sitting s : List.of(before, after)) {
            picture.add(label(s), s);
        }
        boolean written = picture.write(file);
        terminal.note(written ? "wrote " + file : "no picture written, because there is no curve to draw");
    }

    private void printChanges(SittingComparison comparison, SetUpSpread spread) {
        if (comparison.changes().isEmpty()) {
            terminal.say("%nNo resonance of A could be found again in B.");
            return;
        }
        terminal.say("%nB minus A, ± one standard uncertainty. It includes the spread of setting up again, taken as");
        terminal.say(
                "%s %% of frequency, %s %% of Q and %s dB. DIFFERS means outside the 95 %% interval,",
                Figures.plain(100 * spread.frequencyShare()),
                Figures.plain(100 * spread.qShare()),
                Figures.plain(spread.levelDb()));
        terminal.say("where one comparison in twenty lies by chance alone.");
        Table table = new Table("A (Hz)", "B (Hz)", "frequency (Hz)", "Q", "level (dB)", "resonance");
        comparison
                .changes()
                .forEach(c -> table.add(
                        Figures.text(c.first().frequencyHz().value(), 2),
                        Figures.text(c.second().frequencyHz().value(), 2),
                        text(c.frequencyHz()),
                        text(c.q()),
                        text(c.levelDb()),
                        c.name().orElse("no name") + ": " + verdict(c)));
        table.lines().forEach(terminal.out()::println);
    }

    private void printAlone(String side, List<ShownResonance> alone) {
        if (!alone.isEmpty()) {
            terminal.say("%nIn %s alone", side);
            alone.forEach(r -> terminal.say(
                    "  %s Hz, %s",
                    Figures.text(r.found().resonance().frequencyHz().value(), 2),
                    r.name().orElse("no name")));
        }
    }

    private static String text(Change change) {
        String sign = change.difference().value() > 0 ? "+" : "";
        return sign + Figures.text(change.difference());
    }

    private static String verdict(ResonanceChange change) {
        return "frequency " + word(change.frequencyHz()) + ", Q " + word(change.q()) + ", level "
                + word(change.levelDb());
    }

    private static String word(Change change) {
        return change.differs() ? "DIFFERS" : "cannot tell";
    }

    private String label(Sitting s) {
        return "sitting " + s.id() + " of instrument " + s.instrument() + ", "
                + s.takenAt().text(zone) + ", "
                + s.conditions().stage().map(Stage::words).orElse("stage unknown");
    }

    private static String version(Sitting s) {
        return s.latest().methodVersion();
    }
}
