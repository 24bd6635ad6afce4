package io.github.tapwright.cli;

import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingComparison;
import io.github.tapwright.comparison.TwoSittings;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Figures;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;

/** Two sittings side by side, for people: whether they may be compared, the figures, the words. */
final class ComparisonText {

    private final Terminal terminal;
    private final ZoneId zone;

    ComparisonText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    void print(CompareSittings.Compared compared) {
        SittingComparison comparison = compared.comparison();
        printHead(compared);
        printChanges(comparison, compared.bench());
        printAlone("A", comparison.onlyFirst());
        printAlone("B", comparison.onlySecond());
    }

    /** Writes both response curves into one picture. */
    void draw(CompareSittings.Compared compared, Path file) {
        CurvePicture picture = new CurvePicture("Response to taps, two sittings");
        compared.comparison()
                .comparability()
                .despite()
                .ifPresent(why -> picture.subtitle("compared although the conditions forbid it: " + why));
        for (Sitting s : List.of(compared.first(), compared.second())) {
            picture.add(label(s), s);
        }
        boolean written = Output.tryTo(file, () -> picture.write(file));
        terminal.note(written ? "wrote " + file : "no picture written, because there is no curve to draw");
    }

    /** Which two, and whether they may be compared. */
    void printHead(TwoSittings two) {
        Comparability comparability = two.comparability();
        terminal.say("A: %s%nB: %s", label(two.first()), label(two.second()));
        List<ConditionCheck> troubles = comparability.troubles();
        terminal.say("%nMay they be compared?");
        troubles.forEach(
                c -> terminal.say("  - %s, %s: %s", c.condition(), c.worst().words(), c.reason()));
        String same = comparability.checks().stream()
                .filter(c -> c.worst() == Grade.FINE)
                .map(ConditionCheck::condition)
                .collect(Collectors.joining(", "));
        terminal.say("  - %s: fine", same.isEmpty() ? "nothing" : same);
        comparability
                .despite()
                .ifPresent(why -> terminal.say("  Refused figures are shown all the same, because: %s", why));
    }

    private void printChanges(SittingComparison comparison, BenchKnowledge bench) {
        if (comparison.changes().isEmpty()) {
            terminal.say("%nNo resonance of A could be found again in B.");
            return;
        }
        terminal.say("%nB minus A in A's air, ± half the 95 %% interval: one in twenty lies outside by chance alone.");
        printSpread(bench.spread());
        Table table = new Table(
                "A (Hz)", "B (Hz)", "as measured", "frequency (Hz)", "Q", "decay time (s)", "level (dB)", "resonance");
        comparison.changes().stream().map(InWords::row).forEach(table::add);
        table.lines().forEach(terminal.out()::println);
        terminal.say(
                "%nIn words, %s%s",
                InWords.asked(comparison),
                comparison.questions() > 1 ? ": of so many, chance alone answers some with yes." : ".");
        comparison.changes().forEach(c -> printWords(c, bench.spread()));
    }

    private void printSpread(SetUpSpread spread) {
        terminal.say("Setting up again moves figures by %s: %s.", spread.words(), spread.basisWords());
    }

    /** What differs, each in a sentence; what cannot be told, together in one line. */
    private void printWords(ResonanceChange change, SetUpSpread spread) {
        String name = change.called();
        for (Difference.Verdict told : List.of(Difference.Verdict.DIFFERS, Difference.Verdict.DIFFERS_ALONE)) {
            change.differences().stream()
                    .filter(d -> d.verdict() == told)
                    .forEach(d -> terminal.say("  - %s", InWords.sentence(name, d, spread)));
        }
        say(name, change, Difference.Verdict.CANNOT_TELL, "cannot tell");
        say(name, change, Difference.Verdict.REFUSED, "not compared, the conditions forbid it");
    }

    private void say(String name, ResonanceChange change, Difference.Verdict verdict, String words) {
        String quantities = change.differences().stream()
                .filter(d -> d.verdict() == verdict)
                .map(d -> d.quantity().words())
                .collect(Collectors.joining(", "));
        if (!quantities.isEmpty()) {
            terminal.say("  - %s, %s: %s", name, quantities, words);
        }
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

    private String label(Sitting s) {
        return "sitting " + s.id() + " of instrument " + s.instrument() + ", "
                + s.takenAt().text(zone) + ", "
                + s.conditions().stage().map(Stage::words).orElse("stage unknown");
    }
}
