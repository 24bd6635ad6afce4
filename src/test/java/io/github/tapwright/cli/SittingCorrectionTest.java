package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Correcting a sitting and computing it anew: what was there before stays. */
class SittingCorrectionTest {

    private static final Path RECORDING = CommandRun.DEMO.resolve("33-2024-05-14-strung.flac");

    @TempDir
    Path folder;

    @BeforeEach
    void putTheInstrumentOnTheShelf() {
        done("instrument", "add", "33");
    }

    @Test
    void aCorrectionOfASittingKeepsWhatItReplaces() {
        String added = done("sitting", "add", "33", RECORDING, "--humidity", "24", "--gain", "12 o'clock")
                .out();
        String id = added.substring("Sitting ".length(), added.indexOf(" of instrument"));

        CommandRun run = done("sitting", "edit", id, "--humidity", "42", "--hole", "covered");

        assertThat(run.out())
                .contains("relative humidity 42 %; soundhole covered", "gain 12 o'clock")
                .contains("before a correction: relative humidity 24 %; gain 12 o'clock");
        assertThat(done("sitting", "show", id).out()).contains("analysis 2 of 2"); // the hole decides names
    }

    @Test
    void reanalysisInAnotherBandStandsBesideTheFirst() {
        String added = done("sitting", "add", "33", RECORDING).out();
        String id = added.substring("Sitting ".length(), added.indexOf(" of instrument"));

        assertThat(done("sitting", "reanalyse", id, "--band", "80:300").out()).contains("analysis 2 by method taps-");
        assertThat(done("sitting", "show", id).out()).contains("analysis 2 of 2");
    }

    private CommandRun done(Object... arguments) {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--archive");
        all.add(folder.resolve("archive"));
        CommandRun run = CommandRun.of(all.toArray());
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }
}
