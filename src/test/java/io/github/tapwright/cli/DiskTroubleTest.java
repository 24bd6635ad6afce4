package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.archive.SmallDisk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands say, and with which exit code, when the disk is full, cannot be written, or has lost something. */
class DiskTroubleTest {

    private static final int ARCHIVE_TROUBLE = 4;
    private static final Path TAPS = CommandRun.DEMO.resolve("33-2024-05-14-strung.flac");
    private static final Path MORE = CommandRun.DEMO.resolve("33-2024-12-03-later.flac");

    @TempDir
    Path folder;

    private SmallDisk disk;
    private Path archive;

    @BeforeEach
    void fillTheArchive() throws IOException {
        disk = SmallDisk.in(Files.createDirectory(folder.resolve("disk")));
        archive = disk.folder().resolve("archive");
        assertThat(run("instrument", "add", "33").code()).isZero();
        assertThat(run("sitting", "add", "33", TAPS).code()).isZero();
    }

    @AfterEach
    void unmount() {
        if (disk != null) {
            disk.close();
        }
    }

    private CommandRun run(Object... arguments) {
        return CommandRun.of(Stream.concat(Stream.of(arguments), Stream.of("--archive", archive))
                .toArray());
    }

    private static void assertTrouble(CommandRun run, String words) {
        assertThat(run.err()).contains(words).doesNotContain("\tat ").hasLineCount(1);
        assertThat(run.code()).isEqualTo(ARCHIVE_TROUBLE);
    }

    @Test
    void aFullDiskIsSaidWithExitCodeFourAndLaterAllIsWell() throws IOException {
        disk.fill(0);
        assertTrouble(run("sitting", "add", "33", MORE), "is full; free some space");
        assertTrouble(run("sitting", "name", "1", "--frequency", "200", "boom"), "is full; free some space");
        assertTrouble(run("backup", disk.folder().resolve("copy.zip")), "is full; free some space");
        CommandRun export = run("export", disk.folder().resolve("out"));
        assertThat(export.code()).isNotZero();
        assertThat(export.err()).contains("full").hasLineCount(1);

        disk.free();
        assertThat(run("verify").out()).contains("Everything is as it should be");
        assertThat(run("sitting", "add", "33", MORE).code()).isZero();
        assertThat(run("verify").out()).contains("2 sittings, 2 originals").doesNotContain("left over");
    }

    @Test
    void aDiskThatCannotBeWrittenIsSaidWithExitCodeFour() {
        disk.makeReadOnly();
        for (List<String> command : List.of(
                List.of("sitting", "add", "33", MORE.toString()),
                List.of("instrument", "add", "34"),
                List.of("instrument", "list"),
                List.of("verify"))) {
            assertTrouble(run(command.toArray()), "no permission to write");
        }
        disk.makeWritable();
        assertThat(run("verify").code()).isZero();
    }

    @Test
    void aMissingOriginalIsNamedAndABackupBringsItBack() throws IOException {
        Path copy = folder.resolve("copy.zip");
        assertThat(run("backup", copy).code()).isZero();
        Path original;
        try (Stream<Path> files = Files.walk(archive.resolve("originals"))) {
            original = files.filter(Files::isRegularFile).findFirst().orElseThrow();
        }
        Files.delete(original);

        CommandRun verify = run("verify");
        assertThat(verify.out()).contains(original + " is missing", "from a backup");
        assertThat(verify.code()).isEqualTo(ARCHIVE_TROUBLE);
        assertTrouble(run("sitting", "reanalyse", "1", "--band", "60:500"), "is missing");
        assertTrouble(run("backup", folder.resolve("bad.zip")), "is missing");
        assertThat(run("sitting", "show", "1").code()).isZero();

        Path again = folder.resolve("again");
        assertThat(CommandRun.of("restore", copy, again).code()).isZero();
        Files.createDirectories(original.getParent());
        Files.copy(again.resolve(archive.relativize(original)), original);
        assertThat(run("verify").code()).isZero();
    }
}
