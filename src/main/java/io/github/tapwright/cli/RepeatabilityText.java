package io.github.tapwright.cli;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudiedResonance;
import io.github.tapwright.comparison.StudyDoubts;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.util.stream.Collectors;

/** A study of the bench for people. */
final class RepeatabilityText {

    private final Terminal terminal;

    RepeatabilityText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(BenchStudy study) {
        terminal.say(
                "%d set-ups of instrument %s: sittings %s",
                study.sittings().size(),
                study.sittings().get(0).instrument(),
                study.sittings().stream()
                        .map(SittingOutline::id)
                        .map(Object::toString)
                        .collect(Collectors.joining(", ")));
        StudyDoubts.of(study.sittings()).forEach(doubt -> terminal.say("%s", doubt));
        if (study.resonances().isEmpty()) {
            terminal.say("No resonance was found in every set-up.");
            return;
        }
        terminal.say("%nStandard deviations: within one set-up (s r), added by setting up again (s L), together (s R)");
        Table table =
                new Table("mean (Hz)", "s r (Hz)", "s L (Hz)", "s R (Hz)", "Q", "s R", "level s R (dB)", "resonance");
        study.resonances().forEach(r -> table.add(row(r)));
        table.lines().forEach(terminal.out()::println);
        study.spread().ifPresent(s -> print(s, study));
    }

    private void print(SetUpSpread spread, BenchStudy study) {
        terminal.say("%nSetting up again on this bench moves figures by %s (one standard deviation,", spread.words());
        terminal.say("%s degrees of freedom).", Figures.plain(spread.frequency().degreesOfFreedom()));
        if (!study.studiesLevels()) {
            terminal.say("%s", BenchStudy.LEVEL_ASSUMED);
        }
    }

    private static String[] row(StudiedResonance r) {
        return new String[] {
            Figures.text(r.frequencyHz().mean(), 2),
            Figures.text(r.frequencyHz().withinSetUp(), 3),
            Figures.text(r.frequencyHz().betweenSetUps(), 3),
            Figures.text(r.frequencyHz().reproducibility(), 3),
            Figures.text(r.q().mean(), 1),
            Figures.text(r.q().reproducibility(), 1),
            r.levelDb().map(l -> Figures.text(l.reproducibility(), 2)).orElse(InWords.ZERO_LEVEL),
            r.name().orElse("no name")
        };
    }
}
