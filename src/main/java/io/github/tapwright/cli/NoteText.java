package io.github.tapwright.cli;

import io.github.tapwright.note.DecayTime;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.note.WholeDecay;
import io.github.tapwright.sitting.AnalyseNotes;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.function.Function;

/** A plucked note for people: pitch first, then how it rings, then its partials. */
final class NoteText {

    private static final String NONE = "–";

    private final Terminal terminal;

    NoteText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(String name, AnalyseNotes.Found found) {
        NoteResult result = found.result();
        terminal.say(
                "%s: %s, %s kHz, %s s",
                name,
                found.facts().format(),
                Figures.plain(found.facts().sampleRateHz() / 1000),
                Figures.text(found.facts().durationSeconds(), 1));
        terminal.say("  pitch               %s", pitch(result));
        terminal.say("  inharmonicity B     %s", orReason(result.inharmonicity(), NoteText::small));
        printDecay(result.decay());
        result.pitch()
                .found()
                .flatMap(p -> result.attackSeconds().found())
                .ifPresent(s -> terminal.say("  attack              %s s", Figures.text(s, 3)));
        result.spectralCentroidHz()
                .found()
                .ifPresent(hz -> terminal.say("  spectral centroid   %s Hz", Figures.text(hz, 0)));
        printPartials(result.partials());
        printWarnings(found);
        terminal.say("");
    }

    private static String pitch(NoteResult result) {
        return orReason(
                result.pitch(),
                p -> Figures.text(p.hz()) + " Hz, " + p.nearest() + " " + signed(p) + " cents (A4 = "
                        + Figures.plain(result.settings().a4Hz()) + " Hz)");
    }

    private static String signed(Pitch pitch) {
        return (pitch.cents().value() > 0 ? "+" : "") + Figures.text(pitch.cents());
    }

    private void printDecay(WholeDecay decay) {
        terminal.say("  early decay (EDT)   %s", orReason(decay.early(), NoteText::seconds));
        terminal.say("  decay for 60 dB     %s", orReason(decay.decayTime(), d -> seconds(d) + " by " + d.range()));
        if (decay.t30().found().isEmpty() && decay.t20().found().isPresent()) {
            terminal.say(
                    "                      no T30: %s", decay.t30().refusal().orElse(""));
        }
    }

    private static String seconds(DecayTime decay) {
        return Figures.text(decay.seconds()) + " s";
    }

    private void printPartials(List<Partial> partials) {
        if (partials.isEmpty()) {
            return;
        }
        terminal.say(
                "%nPartials (± one standard uncertainty; level just after the pluck re full scale; decay for 60 dB)");
        Table table = new Table(
                "n",
                "frequency (Hz)",
                "level (dB)",
                "off n·f1 (cents)",
                "decay (s)",
                "early (s)",
                "late (s)",
                "remark");
        for (Partial p : partials) {
            table.add(
                    Integer.toString(p.number()),
                    Figures.text(p.frequencyHz()),
                    Figures.text(p.levelDb()),
                    Figures.text(p.harmonicCents(), 1),
                    p.decay().whole().map(Figures::text).orElse(NONE),
                    p.decay().early().map(Figures::text).orElse(NONE),
                    p.decay().late().map(Figures::text).orElse(NONE),
                    p.remark());
        }
        table.lines().forEach(terminal.out()::println);
    }

    private void printWarnings(AnalyseNotes.Found found) {
        if (found.facts().notices().isEmpty() && found.result().warnings().isEmpty()) {
            return;
        }
        terminal.say("%nWarnings");
        found.facts().notices().forEach(n -> terminal.say("  - %s", n));
        found.result().warnings().forEach(w -> terminal.say("  - %s", w));
    }

    /** B is small: as a multiple of 10⁻⁴. */
    private static String small(Estimate b) {
        return "(" + Figures.text(b.times(1e4)) + ")·10⁻⁴";
    }

    private static <T> String orReason(Finding<T> finding, Function<T, String> words) {
        return finding.found()
                .map(words)
                .orElseGet(() -> "cannot tell: " + finding.refusal().orElse(""));
    }
}
