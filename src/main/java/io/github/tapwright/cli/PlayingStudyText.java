package io.github.tapwright.cli;

import io.github.tapwright.comparison.StudyDoubts;
import io.github.tapwright.comparison.played.PlayedQuantity;
import io.github.tapwright.comparison.played.PlayedScatter;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.comparison.played.PlayingStudyWords;
import io.github.tapwright.sitting.SittingOutline;
import java.util.stream.Collectors;

/** A study of playing again for people. */
final class PlayingStudyText {

    private final Terminal terminal;

    PlayingStudyText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(PlayingStudy study) {
        terminal.say(
                "%d sittings of %s on instrument %s, played anew each time: sittings %s",
                study.sittings().size(),
                study.procedure(),
                study.sittings().get(0).instrument(),
                study.sittings().stream()
                        .map(SittingOutline::id)
                        .map(Object::toString)
                        .collect(Collectors.joining(", ")));
        StudyDoubts.of(study.sittings()).forEach(doubt -> terminal.say("%s", doubt));
        if (!study.scatters().isEmpty()) {
            printScatters(study);
        }
        PlayingStudyWords.notStudied(study).forEach(words -> terminal.say("%s", words));
    }

    private void printScatters(PlayingStudy study) {
        terminal.say(
                "%nThe mean over all strings as standard deviations: what its %s leave unsure (s r), added by",
                study.procedure());
        terminal.say("playing again (s L), together (s R, and where the true one lies, 19 times of 20)");
        Table table = new Table(
                "mean", "strings", study.procedure(), "s r", "s L", "s R", "95 %", "counted", "unit", "quantity");
        study.scatters().forEach(s -> table.add(row(s)));
        table.lines().forEach(terminal.out()::println);
        PlayingStudyWords.cautions(study).forEach(words -> terminal.say("%s", words));
        terminal.say("%n%s", PlayingStudyWords.moves(study));
    }

    private static String[] row(PlayedScatter s) {
        PlayedQuantity quantity = s.quantity();
        return new String[] {
            PlayingStudyWords.mean(s),
            Integer.toString(s.strings()),
            Integer.toString(s.figures()),
            PlayingStudyWords.deviation(quantity, s.scatter().withinSetUp()),
            PlayingStudyWords.deviation(quantity, s.scatter().betweenSetUps()),
            PlayingStudyWords.deviation(quantity, s.scatter().reproducibility()),
            PlayingStudyWords.reproducibility95(s),
            PlayingStudyWords.deviation(quantity, s.counted().deviation()),
            quantity.unit(),
            quantity.words()
        };
    }
}
