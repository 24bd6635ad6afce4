package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.mode.ModeName;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One recording kept in several sittings is one set-up: said when it is added, refused in studies, counted once in histories. */
class SameRecordingTest {

    private static final Path FIRST = CommandRun.DEMO.resolve("31-2024-04-09-strung.flac");
    private static final Path OTHER = CommandRun.DEMO.resolve("31-2024-10-15-later.flac");

    @TempDir
    Path folder;

    private ArchiveRun archive;

    private CommandRun add(Path file, String day) {
        CommandRun run =
                archive.run("sitting", "add", "41", file, "--taken", day, "--hole", "open", "--strings", "damped");
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    @BeforeEach
    void oneRecordingKeptTwiceAndAnotherOnce() {
        archive = ArchiveRun.with("41", folder);
        assertThat(add(FIRST, "2026-01-01").out()).doesNotContain("already kept");
        assertThat(add(FIRST, "2026-01-02").out()).contains("this very recording is already kept in sitting 1;");
        assertThat(add(OTHER, "2026-01-03").out()).doesNotContain("already kept");
    }

    @Test
    void aStudyOfItIsRefusedAndNothingIsKept() {
        CommandRun run = archive.run("repeatability", 3, 2, 1, "--keep");

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err())
                .contains("sittings 1 and 2 hold the same recording, which is one set-up")
                .contains("record anew")
                .hasLineCount(1);
        assertThat(archive.run("repeatability").code()).isEqualTo(ExitCode.NOTHING_USABLE);
    }

    @Test
    void comparedWithItselfItIsRefusedUnlessTheMakerInsists() {
        CommandRun run = archive.run("compare", 1, 2);

        assertThat(run.out())
                .contains("recording, refused: both hold " + FIRST.getFileName()
                        + ": one recording cannot differ from itself; record anew")
                .doesNotContain("cannot tell");
        assertThat(archive.run("compare", 1, 2, "--despite", "the second under another day")
                        .out())
                .contains("cannot tell");
        assertThat(archive.run("compare", 1, 3).out()).doesNotContain("recording, refused");
    }

    /** Two sittings and a copy of one lie on a line by themselves: that would be a sensitivity without any doubt. */
    @Test
    void itTeachesNothingOfHumidityTwice() throws IOException {
        for (int sitting = 1; sitting <= 3; sitting++) {
            int humidity = sitting == 3 ? 56 : 40;
            assertThat(archive.run("sitting", "edit", sitting, "--stage", "strung", "--humidity", humidity)
                            .code())
                    .isZero();
        }
        JsonNode json = new ObjectMapper()
                .readTree(archive.run("compare", "1", "3", "--json").out());
        assertThat(json.path("humidity_sensitivity").findValuesAsText("basis"))
                .hasSize(ModeName.values().length + 1)
                .allMatch(basis -> basis.startsWith("assumed"));
    }

    @Test
    void aHistoryCountsItOnceAndNamesTheOther() throws IOException {
        assertThat(archive.run("trend", "41").out())
                .contains("sitting 2 left out: it holds the same recording as sitting 1, which counts already");
        JsonNode json =
                new ObjectMapper().readTree(archive.run("trend", "41", "--json").out());
        assertThat(json.path("series").path(0).path("figures").findValuesAsText("sitting"))
                .containsExactly("1", "3");
    }
}
