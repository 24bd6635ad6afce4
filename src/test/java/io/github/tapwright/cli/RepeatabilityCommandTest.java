package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.comparison.SetUpSpread;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Three set-ups of one instrument, studied and kept, and what comparisons make of them. */
class RepeatabilityCommandTest {

    private static final String[] SET_UPS = {
        "31-2024-04-09-strung.flac", "31-2024-10-15-later.flac", "32-2024-04-16-strung.flac"
    };

    @TempDir
    Path folder;

    private ArchiveRun archive;

    @BeforeEach
    void threeSittings() {
        archive = ArchiveRun.with("41", folder);
        for (String file : SET_UPS) {
            CommandRun run = archive.run(
                    "sitting",
                    "add",
                    "41",
                    CommandRun.DEMO.resolve(file),
                    "--strings",
                    "damped",
                    "--stage",
                    "strung",
                    "--hole",
                    "open");
            assertThat(run.code()).as(run.err()).isZero();
        }
    }

    @Test
    void aStudyKeptIsWhatComparisonsRestOn() throws IOException {
        assertThat(archive.run("repeatability").code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(archive.run("compare", 1, 2).out()).contains("assumed, not measured on this bench");

        CommandRun kept = archive.run("repeatability", 1, 2, 3, "--keep", "--csv", folder.resolve("bench.csv"));

        assertThat(kept.out()).contains("Fewer than 5 set-ups", "main top", "2 degrees of freedom");
        assertThat(Files.readAllLines(folder.resolve("bench.csv"))).hasSizeGreaterThan(2);
        assertThat(archive.run("compare", 1, 2).out()).contains("measured on this bench.");
        JsonNode shown = new ObjectMapper()
                .readTree(archive.run("repeatability", "--json").out());
        assertThat(shown.path("sittings").size()).isEqualTo(3);
        assertThat(shown.path("set_up_spread").path("frequency_percent").doubleValue())
                .isPositive();
        assertThat(archive.run("verify").code()).isZero();
        JsonNode spread = shown.path("set_up_spread");
        SetUpSpread moved = SetUpSpread.given(
                spread.path("frequency_percent").doubleValue() / 100,
                spread.path("q_percent").doubleValue() / 100,
                spread.path("level_db").doubleValue());
        assertThat(kept.out()).as("rounded as everywhere").contains("moves figures by " + moved.words() + " (one");
    }

    @Test
    void stringingOrFinishingAnInstrumentIsNoSettingUpAgain() {
        archive.run("sitting", "edit", 2, "--stage", "finished");
        assertThat(archive.run("repeatability", 1, 2, 3).err())
                .contains("worked on between sittings 1 and 2", "strung / finished", "sitting edit")
                .hasLineCount(1);

        archive.run("sitting", "edit", 2, "--stage", "later", "--strings", "off");
        assertThat(archive.run("repeatability", 1, 2, 3).err()).contains("strings on / strings off");

        archive.run("sitting", "edit", 2, "--strings", "damped");
        assertThat(archive.run("repeatability", 1, 2, 3).code()).isZero();
    }

    @Test
    void monthsAndOtherAirBetweenSetUpsAreSaid() throws IOException {
        String alike = archive.run("repeatability", 1, 2, 3).out();
        assertThat(alike).doesNotContain("days apart", "relative humidity");

        archive.run("sitting", "edit", 1, "--taken", "2026-01-14", "--humidity", "41");
        archive.run("sitting", "edit", 3, "--humidity", "58");

        assertThat(archive.run("repeatability", 1, 2, 3).out())
                .containsPattern("First and last lie \\d\\d days apart")
                .contains("The air was between 41 and 58 % relative humidity");
        assertThat(new ObjectMapper()
                        .readTree(
                                archive.run("repeatability", 1, 2, 3, "--json").out())
                        .path("warnings"))
                .hasSize(3);
    }

    @Test
    void aStudyForgottenNoLongerHoldsAndNothingIsDeleted() {
        assertThat(archive.run("repeatability", "--forget").err())
                .contains("no study is kept")
                .hasLineCount(1);
        assertThat(archive.run("repeatability", 1, 2, 3, "--keep").code()).isZero();
        assertThat(archive.run("repeatability", 1, "--forget").err()).contains("SITTING does not go with --forget");
        assertThat(archive.run("repeatability", "--keep", "--forget").err()).contains("does not go with --forget");

        CommandRun forgotten = archive.run("repeatability", "--forget");

        assertThat(forgotten.code()).isZero();
        assertThat(forgotten.out())
                .contains("repeatability 1 2 3 --keep would keep it again", "No sitting was deleted")
                .contains("0.3 % of frequency, 5 % of Q and 1 dB", "assumed, not measured");
        assertThat(archive.run("repeatability").code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(archive.run("compare", 1, 2).out()).contains("assumed, not measured on this bench");
        assertThat(archive.run("verify").out()).contains("3 sittings", "Everything is as it should be");
        assertThat(archive.run("repeatability", 1, 2, 3, "--keep").code()).isZero();
        assertThat(archive.run("compare", 1, 2).out()).contains("measured on this bench.");
    }

    @Test
    void whatMakesNoStudyIsRefusedInOneLine() {
        assertThat(archive.run("repeatability", 1, 2).err())
                .contains("needs 3 set-ups at least")
                .hasLineCount(1);
        assertThat(archive.run("repeatability", 1, 2, 2).err())
                .contains("given twice")
                .hasLineCount(1);
        assertThat(archive.run("sitting", "edit", 3, "--hole", "covered").code())
                .isZero();
        assertThat(archive.run("repeatability", 1, 2, 3).err())
                .contains("sittings 1 and 3 may not be compared, soundhole")
                .hasLineCount(1);
    }
}
