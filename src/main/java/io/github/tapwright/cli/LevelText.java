package io.github.tapwright.cli;

import io.github.tapwright.level.BandLevel;
import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.level.Level;
import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.level.band.Band;
import io.github.tapwright.sitting.MeasuredLevels;
import io.github.tapwright.sitting.SoundFacts;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.function.Function;

/** The levels of one recording, for people. */
final class LevelText {

    private final Terminal terminal;

    LevelText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(MeasuredLevels measured) {
        SoundFacts facts = measured.facts();
        terminal.say(
                "%s: %s, %s kHz, %s, %s s",
                measured.file(),
                facts.format(),
                Figures.plain(facts.sampleRateHz() / 1000),
                facts.channelCount() == 1 ? "1 channel" : facts.channelCount() + " channels",
                Figures.text(facts.durationSeconds(), 1));
        if (measured.audible()) {
            printLevels(measured);
            measured.report().programme().ifPresent(new ProgrammeText(terminal)::print);
            new LoudnessText(terminal, measured.report().channels()).print();
            printBands(measured);
        }
        List<String> warnings = measured.warnings();
        if (!warnings.isEmpty()) {
            terminal.say("%nWarnings");
            warnings.forEach(w -> terminal.say("  - %s", w));
        }
        terminal.say("");
    }

    private void printLevels(MeasuredLevels measured) {
        List<ChannelLevels> channels = measured.report().channels();
        terminal.say("%nLevels (%s)", measured.report().settings().reference().unit());
        Table table = new Table(ChannelColumns.row("", channels.size(), ChannelColumns::title, ""));
        table.add(level("LAeq", channels, SoundLevels::laeq, "A-weighted, average over the whole recording"));
        table.add(level("LCeq", channels, SoundLevels::lceq, "C-weighted, average"));
        table.add(level("LZeq", channels, SoundLevels::lzeq, "unweighted, average"));
        table.add(level("LAFmax", channels, SoundLevels::lafMax, "A-weighted, highest, fast (125 ms)"));
        table.add(level("LASmax", channels, SoundLevels::lasMax, "A-weighted, highest, slow (1 s)"));
        table.add(level("LAE", channels, SoundLevels::lae, "A-weighted, all of it in one second"));
        table.add(level("LCpeak", channels, SoundLevels::lcPeak, "C-weighted, highest sample"));
        table.lines().forEach(terminal.out()::println);
    }

    private void printBands(MeasuredLevels measured) {
        List<ChannelLevels> channels = measured.report().channels();
        terminal.say(
                "%nThird-octave bands (%s, average)",
                measured.report().settings().reference().unit());
        Table table = new Table(ChannelColumns.row("band (Hz)", channels.size(), ChannelColumns::title, ""));
        channels.stream()
                .flatMap(c -> c.thirdOctaves().stream().map(BandLevel::band))
                .distinct()
                .sorted((a, b) -> Double.compare(a.midHz(), b.midHz()))
                .forEach(band -> table.add(ChannelColumns.row(
                        Figures.plain(band.nominalHz()), channels.size(), c -> inBand(channels.get(c), band), "")));
        table.lines().forEach(terminal.out()::println);
    }

    private static String inBand(ChannelLevels channel, Band band) {
        return channel.thirdOctaves().stream()
                .filter(b -> b.band().equals(band))
                .findFirst()
                .map(b -> Figures.text(b.level().levelDb(), 1))
                .orElse(ChannelColumns.NONE);
    }

    private static String[] level(
            String name, List<ChannelLevels> channels, Function<SoundLevels, Level> of, String remark) {
        return ChannelColumns.row(
                name,
                channels.size(),
                c -> channels.get(c)
                        .soundLevels()
                        .map(s -> Figures.text(of.apply(s).levelDb(), 1))
                        .orElse(ChannelColumns.NONE),
                remark);
    }
}
