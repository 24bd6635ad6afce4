package io.github.tapwright.cli;

import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.level.loudness.HeardLoudness;
import io.github.tapwright.level.loudness.NoLoudness;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Loudness in sone and phon, or why there is none, for people. */
final class LoudnessText {

    private final Terminal terminal;
    private final List<ChannelLevels> channels;

    LoudnessText(Terminal terminal, List<ChannelLevels> channels) {
        this.terminal = terminal;
        this.channels = channels;
    }

    void print() {
        terminal.say("%nLoudness as heard (ISO 532-1)");
        if (channels.stream().anyMatch(c -> c.loudness() instanceof HeardLoudness)) {
            printTable();
        }
        for (int c = 0; c < channels.size(); c++) {
            if (channels.get(c).loudness() instanceof NoLoudness none) {
                terminal.say("  %s: none, because %s", ChannelColumns.title(c), none.reason());
            }
        }
    }

    private void printTable() {
        Table table = new Table(ChannelColumns.row("", channels.size(), ChannelColumns::title, ""));
        add(table, "N max (sone)", 2, HeardLoudness::maximumSone, "the loudest moment");
        add(table, "N5 (sone)", 2, HeardLoudness::exceededFivePercentSone, "exceeded for 5 % of the time");
        add(table, "LN5 (phon)", 1, HeardLoudness::exceededFivePercentPhon, "its loudness level");
        add(table, "N (sone)", 2, h -> h.steady().loudnessSone(), "a steady sound with these bands");
        add(table, "LN (phon)", 1, h -> h.steady().loudnessLevelPhon(), "its loudness level");
        table.lines().forEach(terminal.out()::println);
    }

    private void add(Table table, String name, int places, ToDoubleFunction<HeardLoudness> of, String what) {
        List<String> figures = IntStream.range(0, channels.size())
                .mapToObj(c -> channels.get(c).loudness() instanceof HeardLoudness heard
                        ? Figures.text(of.applyAsDouble(heard), places)
                        : ChannelColumns.NONE)
                .toList();
        table.add(ChannelColumns.row(name, channels.size(), figures::get, what));
    }
}
