package io.github.tapwright.cli;

import io.github.tapwright.level.BandLevel;
import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.level.Level;
import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.level.band.Band;
import io.github.tapwright.level.loudness.HeardLoudness;
import io.github.tapwright.level.loudness.NoLoudness;
import io.github.tapwright.sitting.MeasuredLevels;
import io.github.tapwright.sitting.SoundFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;

/** The levels of one recording, for people. */
final class LevelText {

    /** Stands where a channel holds no sound. */
    private static final String NONE = "none";

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
            printLoudness(measured.report().channels());
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
        Table table = new Table(row("", channels, LevelText::title, ""));
        table.add(level("LAeq", channels, SoundLevels::laeq, "A-weighted, average over the whole recording"));
        table.add(level("LCeq", channels, SoundLevels::lceq, "C-weighted, average"));
        table.add(level("LZeq", channels, SoundLevels::lzeq, "unweighted, average"));
        table.add(level("LAFmax", channels, SoundLevels::lafMax, "A-weighted, highest, fast (125 ms)"));
        table.add(level("LASmax", channels, SoundLevels::lasMax, "A-weighted, highest, slow (1 s)"));
        table.add(level("LAE", channels, SoundLevels::lae, "A-weighted, all of it in one second"));
        table.add(level("LCpeak", channels, SoundLevels::lcPeak, "C-weighted, highest sample"));
        table.lines().forEach(terminal.out()::println);
    }

    private void printLoudness(List<ChannelLevels> channels) {
        terminal.say("%nLoudness as heard (ISO 532-1)");
        for (int c = 0; c < channels.size(); c++) {
            String channel = channels.size() == 1 ? "" : "channel " + (c + 1) + ": ";
            if (channels.get(c).loudness() instanceof HeardLoudness heard) {
                terminal.say("  %s%s", channel, words(heard));
            } else if (channels.get(c).loudness() instanceof NoLoudness none) {
                terminal.say("  %snone: %s", channel, none.reason());
            }
        }
    }

    private static String words(HeardLoudness heard) {
        return "%s sone at most; more than %s sone (%s phon) for 5 %% of the time; as a steady sound %s sone (%s phon); %s field"
                .formatted(
                        Figures.text(heard.maximumSone(), 2),
                        Figures.text(heard.exceededFivePercentSone(), 2),
                        Figures.text(heard.exceededFivePercentPhon(), 1),
                        Figures.text(heard.steady().loudnessSone(), 2),
                        Figures.text(heard.steady().loudnessLevelPhon(), 1),
                        heard.field().name().toLowerCase(Locale.ROOT));
    }

    private void printBands(MeasuredLevels measured) {
        List<ChannelLevels> channels = measured.report().channels();
        terminal.say(
                "%nThird-octave bands (%s, average)",
                measured.report().settings().reference().unit());
        Table table = new Table(row("band (Hz)", channels, LevelText::title, ""));
        channels.stream()
                .flatMap(c -> c.thirdOctaves().stream().map(BandLevel::band))
                .distinct()
                .sorted((a, b) -> Double.compare(a.midHz(), b.midHz()))
                .forEach(band -> table.add(
                        row(Figures.plain(band.nominalHz()), channels, c -> inBand(channels.get(c), band), "")));
        table.lines().forEach(terminal.out()::println);
    }

    private static String inBand(ChannelLevels channel, Band band) {
        return channel.thirdOctaves().stream()
                .filter(b -> b.band().equals(band))
                .findFirst()
                .map(b -> Figures.text(b.level().levelDb(), 1))
                .orElse(NONE);
    }

    private static String title(int channel) {
        return "channel " + (channel + 1);
    }

    private static String[] level(
            String name, List<ChannelLevels> channels, Function<SoundLevels, Level> of, String remark) {
        return row(
                name,
                channels,
                c -> channels.get(c)
                        .soundLevels()
                        .map(s -> Figures.text(of.apply(s).levelDb(), 1))
                        .orElse(NONE),
                remark);
    }

    private static String[] row(
            String first, List<ChannelLevels> channels, Function<Integer, String> cell, String last) {
        List<String> cells = new ArrayList<>(List.of(first));
        IntStream.range(0, channels.size()).mapToObj(cell::apply).forEach(cells::add);
        cells.add(last);
        return cells.toArray(String[]::new);
    }
}
