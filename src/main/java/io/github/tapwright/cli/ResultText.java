package io.github.tapwright.cli;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.Strike;
import java.util.List;
import java.util.Optional;

/** Strikes, resonances and warnings of one analysis, for people. */
final class ResultText {

    private final Terminal terminal;

    ResultText(Terminal terminal) {
        this.terminal = terminal;
    }

    /** A resonance under the name that holds for it. */
    record Line(Resonance resonance, Optional<String> name, String reason) {

        static Line of(NamedResonance found) {
            return new Line(found.resonance(), found.name().map(ModeName::words), found.reason());
        }

        static Line of(ShownResonance shown) {
            return new Line(shown.found().resonance(), shown.name(), shown.reason());
        }

        /** Name and reason, and what limits the numbers. */
        String remark() {
            String named = name.orElse("no name") + (reason.isEmpty() ? "" : ": " + reason);
            return resonance.note().isEmpty() ? named : named + " (" + resonance.note() + ")";
        }
    }

    /**
     * Prints one analysis.
     *
     * @param files names of the recordings, in the order in which the strikes count them
     * @param result what was found
     * @param lines its resonances under the names that hold
     * @param notices what else the reader must know
     */
    void print(List<String> files, TapResult result, List<Line> lines, List<String> notices) {
        printStrikes(files, result);
        printResonances(result, lines);
        if (!notices.isEmpty() || !result.warnings().isEmpty()) {
            terminal.say("%nWarnings");
            notices.forEach(n -> terminal.say("  - %s", n));
            result.warnings().forEach(w -> terminal.say("  - %s", w));
        }
    }

    private void printStrikes(List<String> files, TapResult result) {
        List<Strike> strikes = result.strikes();
        if (strikes.isEmpty()) {
            terminal.say("%nNo strikes found%s", result.warnings().isEmpty() ? "." : "; the warnings say why.");
            return;
        }
        terminal.say("%nStrikes");
        Table table = new Table("no.", "time (s)", "peak (dBFS)", "SNR (dB)", "verdict");
        for (int i = 0; i < strikes.size(); i++) {
            Strike s = strikes.get(i);
            String file = files.size() > 1 ? " [" + files.get(s.source()) + "]" : "";
            table.add(
                    Integer.toString(i + 1),
                    Figures.text(s.onsetSeconds(), 3),
                    Figures.text(s.peakDbfs(), 1),
                    Figures.text(s.snrDb(), 1),
                    verdict(s) + file);
        }
        table.lines().forEach(terminal.out()::println);
    }

    private void printResonances(TapResult result, List<Line> lines) {
        if (lines.isEmpty()) {
            if (!result.strikes().isEmpty()) {
                terminal.say("%nNo resonances: %s", whyNone(result));
            }
            return;
        }
        terminal.say(
                "%nResonances (± one standard uncertainty of this set of taps; decay time for 60 dB; 0 dB is the strongest"
                        + " resonance found, listed or not)");
        Table table = new Table("no.", "frequency (Hz)", "Q", "decay time (s)", "level (dB)", "name");
        for (int i = 0; i < lines.size(); i++) {
            Resonance r = lines.get(i).resonance();
            table.add(
                    Integer.toString(i + 1),
                    Figures.text(r.frequencyHz()),
                    Figures.text(r.q()),
                    Figures.text(r.decayTimeSeconds()),
                    Figures.text(r.levelDb()),
                    lines.get(i).remark());
        }
        table.lines().forEach(terminal.out()::println);
    }

    private static String verdict(Strike strike) {
        return strike.used() ? "used" : "rejected: " + strike.reasons();
    }

    private static String whyNone(TapResult result) {
        return result.strikes().stream().noneMatch(Strike::used)
                ? "every strike was rejected, for the reasons above; record again with those mended"
                : "the used strikes ring too briefly or too weakly to tell one frequency from another";
    }
}
