package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One archive with an instrument and two sittings, as a maker would make it, and every command on it. */
class ArchiveCommandsTest {

    private static final Path STRUNG = CommandRun.DEMO.resolve("33-2024-05-14-strung.flac");
    private static final Path LATER = CommandRun.DEMO.resolve("33-2024-12-03-later.flac");

    @TempDir
    static Path folder;

    @TempDir
    Path own;

    @BeforeAll
    static void fillTheArchive() {
        done("instrument", "add", "33", "--construction", "honeycomb-sandwich", "--scale", "650", "--core-mm", "1.5");
        done("sitting", "add", "33", STRUNG, "--taken", "2024-05-14", "--stage", "strung", "--hole", "open");
        done("sitting", "add", "33", LATER, "--taken", "2024-12-03T10:40", "--humidity", "56", "--hole", "open");
    }

    @Test
    void theShelfListsTheInstrumentWithItsSittings() {
        assertThat(done("instrument", "list").out())
                .containsPattern("33 +2 +classical guitar, honeycomb-core sandwich");
        assertThat(done("instrument", "show", "33").out())
                .contains("scale length  650 mm", "material unknown, 1.5 mm", "nickname      unknown", "main top");
    }

    @Test
    void anEditChangesWhatItSaysAndNothingElse() {
        done("instrument", "add", "40", "--bracing", "lattice", "--notes", "first");
        CommandRun run = done("instrument", "edit", "40", "--notes", "second", "--bracing", "");

        assertThat(run.out()).contains("bracing       unknown", "notes         second", "classical guitar");
    }

    @Test
    void reanalysisByTheSameMethodAddsNothing() {
        assertThat(done("sitting", "reanalyse", "1", "2").out())
                .contains("Sitting 1: every figure is the same, nothing added")
                .contains("Sitting 2: every figure is the same, nothing added");
    }

    @Test
    void aComparisonIsAJsonDocumentToo() throws JsonProcessingException {
        JsonNode document =
                new ObjectMapper().readTree(done("compare", "1", "2", "--json").out());

        assertThat(document.path("changes").size()).isGreaterThan(3);
        JsonNode change = document.path("changes").path(0).path("frequency");
        assertThat(change.path("change_as_measured").doubleValue())
                .isEqualTo(change.path("b").doubleValue() - change.path("a").doubleValue());
        assertThat(change.path("change_u").doubleValue()).isPositive();
        assertThat(change.path("budget").size()).as("two fits, setting up").isEqualTo(3);
        assertThat(document.path("set_up_spread").path("level_db").doubleValue())
                .isEqualTo(1);
        assertThat(document.path("comparability").toString()).contains("unknown / 56 %");
        assertThat(document.path("level_reference").asText()).isEqualTo("main top");
        assertThat(document.path("changes").findParents("level"))
                .as("each has its level, the reference none")
                .filteredOn(c -> c.path("level").isNull())
                .singleElement()
                .satisfies(c -> assertThat(c.path("name").asText()).isEqualTo("main top"));
    }

    @Test
    void aSittingShowsItsConditionsWhatIsUnknownAndItsResonances() {
        assertThat(done("sitting", "show", "1").out())
                .contains("Sitting 1 of instrument 33, 2024-05-14", "unknown: temperature, relative humidity")
                .contains("main top", "Method ");
    }

    @Test
    void aSittingIsAJsonDocumentToo() throws JsonProcessingException {
        JsonNode document = new ObjectMapper()
                .readTree(done("sitting", "show", "2", "--json").out());

        assertThat(document.path("relative_humidity_percent").doubleValue()).isEqualTo(56);
        assertThat(document.path("temperature_c").isNull()).isTrue();
        assertThat(document.path("analyses").path(0).path("resonances").size()).isGreaterThan(3);
    }

    @Test
    void theMakersNameHolds() {
        CommandRun run = done("sitting", "name", "2", "--frequency", "368", "long dipole");

        assertThat(run.out()).containsPattern("367\\.\\d+ ± .*long dipole: named by the maker");
        assertThat(done("sitting", "list", "33").out()).contains("long dipole 367.");
    }

    @Test
    void aComparisonListsWhatWasNotTheSameAboveTheFigures() {
        String out =
                done("compare", "1", "2", "--plot", own.resolve("both.png")).out();

        assertThat(out).contains("relative humidity, shown with this warning: unknown / 56 %", "strung / unknown");
        assertThat(out)
                .containsPattern("main top is 2\\.\\d Hz higher")
                .containsPattern("main back, frequency.*: cannot tell");
        assertThat(out.indexOf("relative humidity")).isLessThan(out.indexOf("main top"));
        assertThat(own.resolve("both.png")).isNotEmptyFile();
    }

    @Test
    void aLargeSpreadOfSettingUpHidesEveryDifference() {
        assertThat(done("compare", "1", "2", "--spread", "5:50:10").out()).doesNotContain("Hz higher", "Hz lower");
    }

    @Test
    void theExportHoldsEveryTable() throws IOException {
        done("export", own.resolve("out"));

        try (Stream<Path> files = Files.list(own.resolve("out"))) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "archive.json",
                            "calibrations.csv",
                            "instruments.csv",
                            "listening-answers.csv",
                            "listening-sounds.csv",
                            "listenings.csv",
                            "notes.csv",
                            "partials.csv",
                            "plucks.csv",
                            "recordings.csv",
                            "resonances.csv",
                            "sittings.csv",
                            "strikes.csv");
        }
        assertThat(own.resolve("out/resonances.csv")).content().contains("main top");
    }

    @Test
    void aBackupRestoresToAnArchiveThatVerifies() {
        done("backup", own.resolve("copy.zip"));
        CommandRun restored = CommandRun.of("restore", own.resolve("copy.zip"), own.resolve("again"));

        assertThat(restored.code()).isZero();
        CommandRun verified = CommandRun.of("verify", "--archive", own.resolve("again"));
        assertThat(verified.code()).isZero();
        assertThat(verified.out()).contains("2 sittings, 2 originals", "Everything is as it should be.");
    }

    @Test
    void aDamagedOriginalIsFoundAndNamed() throws IOException {
        done("backup", own.resolve("copy.zip"));
        CommandRun.of("restore", own.resolve("copy.zip"), own.resolve("again"));
        Path original;
        try (Stream<Path> files = Files.walk(own.resolve("again/originals"))) {
            original = files.filter(Files::isRegularFile).findFirst().orElseThrow();
        }
        assertThat(original.toFile().setWritable(true)).isTrue();
        Files.write(original, new byte[] {1, 2, 3});
        CommandRun run = CommandRun.of("verify", "--archive", own.resolve("again"));

        assertThat(run.code()).isEqualTo(ExitCode.ARCHIVE);
        assertThat(run.out()).contains(original.getFileName().toString(), "damaged");
    }

    @Test
    void aSlipInTheArchivesNameMakesNoArchive() {
        Path slip = own.resolve("Tapwrihgt");
        CommandRun run = CommandRun.of("sitting", "list", "--archive", slip);

        assertThat(run.code()).isEqualTo(ExitCode.ARCHIVE);
        assertThat(run.err()).contains(slip.toString()).hasLineCount(1);
        assertThat(slip).doesNotExist();
    }

    @Test
    void theFolderAroundAnArchiveNamesTheArchiveInIt() throws IOException {
        Path demo = Files.createDirectory(own.resolve("demo"));
        Path inside = Files.createDirectory(demo.resolve("archive"));
        assertThat(CommandRun.of("sitting", "list", "--archive", demo).err())
                .contains("choose an archive or an empty folder");
        Files.delete(inside);
        assertThat(CommandRun.of("instrument", "add", "33", "--archive", inside).code())
                .isZero();

        CommandRun run = CommandRun.of("sitting", "list", "--archive", demo);

        assertThat(run.code()).isEqualTo(ExitCode.ARCHIVE);
        assertThat(run.err())
                .contains("is not an archive and not empty; the archive in it is " + inside + ", choose that one")
                .hasLineCount(1);
    }

    @Test
    void whatDoesNotFitTheShelfIsRefusedOnOneLine() {
        assertThat(onArchive("sitting", "add", "99", STRUNG).code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(onArchive("instrument", "add", "33").err()).contains("33").hasLineCount(1);
        assertThat(onArchive("sitting", "show", "77").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(onArchive("compare", "1", "1").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(onArchive("compare", "1", "x").err())
                .contains("numbered 1, 2, 3")
                .hasLineCount(1);
        assertThat(onArchive("sitting", "add", "33", STRUNG, "--taken", "soon").err())
                .contains("2026-03-14");
    }

    @Test
    void aFileThatIsNoSoundLeavesNoSittingBehind() throws IOException {
        Path letter = Files.writeString(own.resolve("letter.flac"), "not a sound, whatever its name says");
        CommandRun run = onArchive("sitting", "add", "33", letter);

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("letter.flac").hasLineCount(1);
        assertThat(done("verify").out()).contains("2 sittings, 2 originals");
    }

    private static CommandRun done(Object... arguments) {
        CommandRun run = onArchive(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private static CommandRun onArchive(Object... arguments) {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--archive");
        all.add(folder.resolve("archive"));
        return CommandRun.of(all.toArray());
    }
}
