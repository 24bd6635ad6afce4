package io.github.tapwright.cli;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.played.FastNote;
import io.github.tapwright.comparison.played.PlayedChange;
import io.github.tapwright.comparison.played.PlayedComparison;
import io.github.tapwright.comparison.played.PlayedWords;
import java.time.ZoneId;

/** Notes or plucks of two sittings, for people: conditions, string by string, over all strings, dead notes, words. */
final class PlayedText {

    private final Terminal terminal;
    private final ComparisonText head;

    PlayedText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.head = new ComparisonText(terminal, zone);
    }

    void print(ComparePlayed.Compared compared) {
        PlayedComparison comparison = compared.comparison();
        head.printHead(compared);
        if (!comparison.isAboutAnything()) {
            terminal.say("%n%s", PlayedWords.NOTHING);
            return;
        }
        terminal.say("%nB minus A, ± half the 95 %% interval of what was played");
        comparison.changes().stream().filter(c -> !c.strings().isEmpty()).forEach(this::printStrings);
        printWords(comparison);
        printFast(comparison);
    }

    private void printStrings(PlayedChange change) {
        terminal.say("%n%s", change.quantity().words());
        Table table = new Table(PlayedWords.headings(change.quantity()));
        change.strings().forEach(s -> table.add(PlayedWords.row(change, s)));
        table.lines().forEach(terminal.out()::println);
        if (change.quantity().kind() == Quantity.DECAY_TIME) {
            terminal.say("  %s", PlayedWords.GEOMETRIC);
        }
    }

    private void printWords(PlayedComparison comparison) {
        terminal.say("%nIn words, over all strings, setting up and playing again included: that moves");
        terminal.say("%s.", PlayedWords.again(comparison.changes()));
        comparison.changes().forEach(c -> terminal.say("  - %s", PlayedWords.sentence(c)));
    }

    private void printFast(PlayedComparison comparison) {
        if (!comparison.fastNotes().isEmpty()) {
            terminal.say("%nNotes that die away much faster than their neighbours");
            comparison.fastNotes().stream().map(FastNote::words).forEach(w -> terminal.say("  - %s", w));
        }
    }
}
