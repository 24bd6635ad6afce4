package io.github.tapwright.desktop.notes;

import io.github.tapwright.note.DecayTime;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What is known about a note, line by line; ± is one standard uncertainty. */
final class NoteFacts {

    private NoteFacts() {}

    static List<NoteFact> of(Fingerboard.Note note, Fingerboard.Settings settings, Optional<String> dead) {
        NoteResult result = note.result();
        List<NoteFact> facts = new ArrayList<>();
        note.whyNoPlace().ifPresent(why -> facts.add(new NoteFact("Place", "none: " + why)));
        dead.ifPresent(why -> facts.add(new NoteFact("Framed", why)));
        facts.add(new NoteFact(
                "Pitch", orReason(result.pitch(), p -> pitch(p, settings.notes().a4Hz()))));
        if (note.place().isPresent()) {
            facts.add(new NoteFact(
                    "Off the fret",
                    orReason(note.pitchErrorCents(settings.tuning()), c -> Figures.difference(c, 1) + " cents")));
        }
        facts.add(new NoteFact("Inharmonicity B", orReason(result.inharmonicity(), NoteFacts::small)));
        facts.add(new NoteFact("Decay, 60 dB", orReason(result.decay().decayTime(), d -> decay(d))));
        facts.add(new NoteFact("Early decay", orReason(result.decay().early(), d -> seconds(d))));
        facts.add(new NoteFact(
                "Level LAFmax", orReason(note.lafMaxDb(), l -> Figures.text(l, 1) + " dB re full scale")));
        facts.add(new NoteFact("Centroid", orReason(result.spectralCentroidHz(), c -> Figures.text(c, 0) + " Hz")));
        result.warnings().forEach(w -> facts.add(new NoteFact("Beware", w)));
        return facts;
    }

    private static String pitch(Pitch p, double a4Hz) {
        return Figures.text(p.hz(), 2) + " Hz; " + p.nearest() + " "
                + (p.cents().value() > 0 ? "+" : "") + Figures.text(p.cents(), 1) + " cents (A4 = "
                + Figures.plain(a4Hz)
                + " Hz)";
    }

    private static String decay(DecayTime decay) {
        return seconds(decay) + " by " + decay.range() + " ("
                + Figures.plain(decay.range().fromDb()) + " to "
                + Figures.plain(decay.range().toDb()) + " dB down)";
    }

    private static String seconds(DecayTime decay) {
        return Figures.text(decay.seconds(), 2) + " s";
    }

    /** B is small: as a multiple of 10⁻⁴. */
    private static String small(Estimate b) {
        return "(" + Figures.text(b.times(1e4), 2) + ")·10⁻⁴";
    }

    static <T> String orReason(Finding<T> finding, Function<T, String> words) {
        return finding.found()
                .map(words)
                .orElseGet(() -> "cannot tell: " + finding.refusal().orElse(""));
    }
}
