package io.github.tapwright.cli;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.played.PlayedQuantity;
import io.github.tapwright.comparison.played.PlayedScatter;
import io.github.tapwright.comparison.played.PlayedWords;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Interval;
import java.util.stream.Collectors;

/** A study of playing again for people. */
final class PlayingStudyText {

    private final Terminal terminal;

    PlayingStudyText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(PlayingStudy study) {
        int count = study.sittings().size();
        terminal.say(
                "%d sittings of %s on instrument %s, played anew each time: sittings %s",
                count,
                study.procedure(),
                study.sittings().get(0).instrument(),
                study.sittings().stream()
                        .map(SittingOutline::id)
                        .map(Object::toString)
                        .collect(Collectors.joining(", ")));
        if (count < BenchStudy.ENOUGH) {
            terminal.say("Fewer than %d sittings: these figures are themselves uncertain.", BenchStudy.ENOUGH);
        }
        if (!study.scatters().isEmpty()) {
            printScatters(study);
        }
        study.notStudied()
                .forEach(n -> terminal.say("Not studied, %s: %s.", n.quantity().words(), n.reason()));
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
        study.scatters().stream()
                .filter(PlayedScatter::isMostlyWithin)
                .forEach(s -> terminal.say(
                        "The %s of one sitting explain most of how far the %s scatters from sitting to sitting; to be cautious"
                                + " half of s R² counts as playing again.",
                        study.procedure(), s.quantity().words()));
        terminal.say("%nPlaying again moves, as one standard deviation, %s.", study.words());
    }

    private static String[] row(PlayedScatter s) {
        PlayedQuantity quantity = s.quantity();
        Interval interval = s.reproducibility95();
        return new String[] {
            PlayedWords.figure(quantity, s.mean()) + " " + quantity.figureUnit(),
            Integer.toString(s.strings()),
            Integer.toString(s.figures()),
            figure(quantity, s.scatter().withinSetUp()),
            figure(quantity, s.scatter().betweenSetUps()),
            figure(quantity, s.scatter().reproducibility()),
            figure(quantity, interval.lower()) + " to " + figure(quantity, interval.upper()),
            figure(quantity, s.counted().deviation()),
            quantity.unit(),
            quantity.words()
        };
    }

    private static String figure(PlayedQuantity quantity, double onScale) {
        return Figures.text(PlayedWords.spread(quantity, onScale), 2);
    }
}
