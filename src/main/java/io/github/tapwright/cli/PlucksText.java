package io.github.tapwright.cli;

import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.PluckComparison;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.StudentProbability;
import java.util.List;
import java.util.Optional;

/** Repeated plucks for people: every pluck, then what two instruments' plucks can tell and what not. */
final class PlucksText {

    private static final String NONE = "–";

    private final Terminal terminal;
    private final String unit;

    PlucksText(Terminal terminal, String unit) {
        this.terminal = terminal;
        this.unit = unit;
    }

    /** Says beside the verdicts what they rest on, as nobody but the maker knows it. */
    void print(List<Pluck> first, List<Pluck> second, List<PluckComparison> comparisons) {
        printPlucks(second.isEmpty() ? "Plucks" : "Plucks of A", first);
        if (second.isEmpty()) {
            return;
        }
        printPlucks("Plucks of B", second);
        comparisons.forEach(this::printComparison);
        terminal.say(
                "%nA verdict holds only if A and B were recorded at the same gain, with the same microphone, at the same place;");
        terminal.say(
                "the files do not say so, and this cannot know. p asks a string alone, the verdict all strings at once: what");
        terminal.say("convinces only alone is \"perhaps\". The mean over the strings is a question of its own.");
        terminal.say("%n%s", PluckComparison.CAUTION);
    }

    void printRemarks(List<String> remarks) {
        if (!remarks.isEmpty()) {
            terminal.say("%nWarnings");
            remarks.forEach(r -> terminal.say("  - %s", r));
        }
    }

    private void printPlucks(String title, List<Pluck> plucks) {
        terminal.say("%s (levels in %s)", title, unit);
        Table table = new Table("no.", "time (s)", "LAFmax (dB)", "momentary (LUFS)", "loudness (sone)", "string");
        for (int i = 0; i < plucks.size(); i++) {
            Pluck p = plucks.get(i);
            table.add(
                    Integer.toString(i + 1),
                    Figures.text(p.attackSeconds(), 2),
                    figure(p.lafMaxDb()),
                    figure(p.momentaryMaxLufs()),
                    figure(p.maximumSone()),
                    p.string().map(s -> Integer.toString(s)).orElse("no open string, left out")
                            + (p.warnings().isEmpty() ? "" : ": " + String.join("; ", p.warnings())));
        }
        table.lines().forEach(terminal.out()::println);
        terminal.say("");
    }

    private static String figure(Optional<Double> value) {
        return value.map(v -> Figures.text(v, 1)).orElse(NONE);
    }

    private void printComparison(PluckComparison comparison) {
        terminal.say("%nB minus A in %s, ± half the 95 %% interval", comparison.quantity());
        Table table =
                new Table("string", "A: plucks", "mean", "B: plucks", "mean", "B − A", "p", "all asked", "verdict");
        for (PluckComparison.OnString s : comparison.strings()) {
            table.add(
                    Integer.toString(s.string()),
                    Integer.toString(s.first().count()),
                    Figures.text(s.first().mean(), 1),
                    Integer.toString(s.second().count()),
                    Figures.text(s.second().mean(), 1),
                    s.difference().map(PlucksText::interval).orElse(NONE),
                    s.probability().map(Figures::probability).orElse(NONE),
                    s.adjustedProbability().map(Figures::probability).orElse(NONE),
                    verdict(s));
        }
        table.lines().forEach(terminal.out()::println);
        comparison.overall().ifPresent(this::printOverall);
    }

    private void printOverall(Estimate d) {
        double p = StudentProbability.twoSided(d);
        terminal.say("  mean over the strings: %s, p %s: %s", interval(d), Figures.probabilityAfterP(p), word(d, p));
    }

    private static String verdict(PluckComparison.OnString string) {
        if (string.difference().isEmpty()) {
            return "cannot tell: two plucks at least are needed on each side";
        }
        Estimate d = string.difference().get();
        String word = word(d, string.adjustedProbability().orElseThrow());
        boolean fine = d.halfWidth95() <= 1 || string.plucksNeeded().isEmpty();
        return fine
                ? word
                : word + "; to tell 1 dB, " + string.plucksNeeded().orElseThrow() + " plucks on each side are needed";
    }

    private static String word(Estimate difference, double adjustedProbability) {
        return switch (Verdict.of(true, difference, adjustedProbability)) {
            case DIFFERS -> "DIFFERS";
            case DIFFERS_ALONE -> "perhaps";
            case CANNOT_TELL, REFUSED -> "cannot tell";
        };
    }

    private static String interval(Estimate d) {
        return (d.value() > 0 ? "+" : "") + Figures.text(d.value(), 1) + " ± " + Figures.text(d.halfWidth95(), 1);
    }
}
