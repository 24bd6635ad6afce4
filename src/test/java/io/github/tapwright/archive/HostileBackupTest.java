package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Backups made to do harm: what the ZIP file itself claims of its entries is never believed. */
class HostileBackupTest {

    private static final int LINK_FOR_ALL = 0xA1FF;

    @TempDir
    Path folder;

    private Path backup;

    @BeforeEach
    void backUp() throws IOException {
        backup = folder.resolve("backup.zip");
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            workshop.add(TestWav.writeRoom(folder.resolve("a.wav"), 1));
            workshop.archive.backUp(backup, Progress.SILENT);
        }
    }

    @Test
    void anEntryThatCallsItselfALinkIsWrittenAsAPlainFile() throws IOException {
        ZipBytes zip = ZipBytes.read(backup);
        zip.entries().forEach(entry -> zip.mode(entry, LINK_FOR_ALL));
        zip.writeTo(backup);

        assertThat(restore().clean()).isTrue();
        try (Stream<Path> files = Files.walk(folder.resolve("restored"))) {
            assertThat(files).noneMatch(Files::isSymbolicLink);
        }
    }

    @Test
    void aLinksTargetInPlaceOfAnOriginalIsRefused() throws IOException {
        replace(original(), "../../../elsewhere".getBytes(StandardCharsets.US_ASCII));
        ZipBytes zip = ZipBytes.read(backup);
        zip.entries().forEach(entry -> zip.mode(entry, LINK_FOR_ALL));
        zip.writeTo(backup);

        assertRefused("does not fit its SHA-256");
    }

    @Test
    void twoEntriesOfOneNameAreRefused() throws IOException {
        add("tapwright.xy", new byte[] {1});
        ZipBytes zip = ZipBytes.read(backup);
        zip.rename("tapwright.xy", "tapwright.db");
        zip.writeTo(backup);

        assertRefused("not on its list of files");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../evil",
                "/tmp/evil",
                "..\\evil",
                "C:\\evil",
                "C:/evil",
                "originals/",
                "originals/ab/../../../evil",
                "captures/evil.wav",
                "desk.properties",
                "tapwright.db-wal"
            })
    void anEntryThatIsNeitherDatabaseNorOriginalIsRefused(String name) throws IOException {
        add("x".repeat(name.length()), new byte[] {1});
        ZipBytes zip = ZipBytes.read(backup);
        zip.rename("x".repeat(name.length()), name);
        zip.writeTo(backup);

        assertRefused("not on its list of files");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 0x7FFF_FFFF, -2})
    void whatTheZipFileSaysOfSizesIsNotBelieved(int size) throws IOException {
        ZipBytes zip = ZipBytes.read(backup);
        zip.entries().forEach(entry -> zip.statedSize(entry, size));
        zip.writeTo(backup);

        try {
            assertThat(restore().clean()).isTrue();
        } catch (ArchiveException e) {
            assertThat(folder.resolve("restored")).doesNotExist();
        }
    }

    @Test
    void aListThatUnpacksToFarMoreThanTheBackupIsRefusedBeforeAnythingIsWritten() throws IOException {
        String list = manifest();
        String line =
                list.lines().filter(l -> l.contains("originals/")).findFirst().orElseThrow();
        String[] words = line.split(" ", -1);
        replace(
                BackupManifest.ENTRY,
                list.replace(line, words[0] + " 2000000000 " + words[2]).getBytes(StandardCharsets.UTF_8));

        assertRefused("unpack to more than 1 GB and 200 times its size");
    }

    private VerifyReport restore() {
        return new Restore(Workshop.CLOCK).restore(backup, folder.resolve("restored"), Progress.SILENT);
    }

    private void assertRefused(String reason) throws IOException {
        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(this::restore)
                .withMessageContaining(reason);
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(f -> String.valueOf(f.getFileName())).toList();
            assertThat(names).containsExactlyInAnyOrder("archive", "a.wav", "backup.zip");
        }
    }

    private String original() throws IOException {
        return manifest()
                .lines()
                .filter(l -> l.contains("originals/"))
                .findFirst()
                .orElseThrow()
                .split(" ", -1)[2];
    }

    private String manifest() throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(backup)) {
            return Files.readString(zip.getPath(BackupManifest.ENTRY));
        }
    }

    private void replace(String entry, byte[] content) throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(backup)) {
            Files.write(zip.getPath(entry), content);
        }
    }

    private void add(String entry, byte[] content) throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(backup);
                OutputStream out = Files.newOutputStream(zip.getPath(entry), StandardOpenOption.CREATE_NEW)) {
            out.write(content);
        }
    }
}
