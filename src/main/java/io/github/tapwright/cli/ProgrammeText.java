package io.github.tapwright.cli;

import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import io.github.tapwright.statistics.Figures;
import java.util.OptionalDouble;

/** Programme loudness, for people. */
final class ProgrammeText {

    private final Terminal terminal;

    ProgrammeText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(ProgrammeLoudness programme) {
        terminal.say("%nProgramme loudness (all channels together, re full scale whatever the calibration)");
        Table table = new Table("", "", "");
        add(table, programme.integratedLufs(), "LUFS", "integrated");
        add(table, programme.momentaryMaxLufs(), "LUFS", "momentary (400 ms), highest");
        add(table, programme.shortTermMaxLufs(), "LUFS", "short-term (3 s), highest");
        add(table, programme.loudnessRangeLu(), "LU", "loudness range");
        add(table, programme.truePeakDb(), "dBFS", "true peak, between the samples");
        table.lines().stream().skip(1).forEach(terminal.out()::println);
    }

    private static void add(Table table, OptionalDouble figure, String unit, String what) {
        String shown = figure.isPresent() ? Figures.text(figure.getAsDouble(), 1) : "none";
        table.add(shown, unit, what);
    }
}
