package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups that were tampered with, cut short, or are none. */
class RestoreTest {

    private static final String MANIFEST = BackupManifest.ENTRY;

    @TempDir
    Path folder;

    private Path pristine;
    private Path backup;
    private Map<String, byte[]> entries;
    private String original;

    @BeforeEach
    void backUp() throws IOException {
        pristine = folder.resolve("pristine.zip");
        backup = folder.resolve("backup.zip");
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            workshop.add(TestWav.write(folder.resolve("a.wav"), 1));
            workshop.archive.backUp(pristine, Progress.SILENT);
        }
        Files.copy(pristine, backup);
        entries = read(pristine);
        original = entries.keySet().stream()
                .filter(name -> name.startsWith("originals/"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void refusesAFolderThatHoldsAnything() {
        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> restore(backup, folder.resolve("archive")))
                .withMessageContaining("is not empty");
    }

    @Test
    void takesAnEmptyFolder() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));

        assertThat(restore(backup, empty).clean()).isTrue();
        assertThat(empty.resolve(original)).hasBinaryContent(bytes(original));
    }

    @Test
    void refusesABackupCutShortAtAnyPlace() throws IOException {
        byte[] whole = Files.readAllBytes(backup);
        for (int length = 0; length < whole.length; length += whole.length / 20) {
            Files.write(backup, Arrays.copyOf(whole, length));
            assertRefused("cut short");
        }
    }

    @Test
    void refusesWhatIsNoZipOrNotThere() throws IOException {
        Files.writeString(backup, "Dear customer");
        assertRefused("no backup");

        Files.delete(backup);
        assertRefused("there is no file");

        Files.createDirectory(backup);
        assertRefused(backup + " is no backup");
    }

    @Test
    void refusesAFlippedBitInAnOriginal() throws IOException {
        bytes(original)[100] ^= 4;
        assertRewrittenRefused("does not fit its SHA-256");
    }

    @Test
    void refusesAnOriginalLongerThanStated() throws IOException {
        byte[] bytes = bytes(original);
        entries.put(original, Arrays.copyOf(bytes, bytes.length + 50_000_000));
        assertRewrittenRefused("longer than its list of files says");
    }

    @Test
    void refusesPathsThatLeadElsewhere() throws IOException {
        for (String path : new String[] {
            "../evil.wav", "/evil.wav", "originals/../evil.wav", "originals\\..\\evil.wav", "originals/ab/evil.wav"
        }) {
            entries = read(pristine);
            entries.put(path, bytes(original));
            assertRewrittenRefused("not on its list");
            changeManifest(original, path);
            assertRewrittenRefused("no file of an archive");
        }
    }

    @Test
    void refusesAnOriginalUnderAnothersName() throws IOException {
        String other = original.substring(0, 20) + "0000000000" + original.substring(30);
        entries.put(other, entries.remove(original));
        changeManifest(original, other);
        assertRewrittenRefused("no file of an archive");
    }

    @Test
    void refusesAListThatIsCutTwiceTheSameOrLacksTheDatabase() throws IOException {
        changeManifest("files 2", "files 3");
        assertRewrittenRefused("not complete");

        entries = read(pristine);
        String line = text(MANIFEST).lines().skip(1).findFirst().orElseThrow() + "\n";
        changeManifest(line, line + line);
        changeManifest("files 2", "files 3");
        assertRewrittenRefused("twice");

        entries = read(pristine);
        changeManifest(line, "");
        changeManifest("files 2", "files 1");
        assertRewrittenRefused("no database");
    }

    @Test
    void refusesABackupThatLacksAListedFileOrTheList() throws IOException {
        byte[] bytes = bytes(original);
        entries.remove(original);
        assertRewrittenRefused("lacks " + original);

        entries.put(original, bytes);
        entries.remove(MANIFEST);
        assertRewrittenRefused("lacks " + MANIFEST);
    }

    @Test
    void refusesMoreThanTheDiskHolds() throws IOException {
        String size = Integer.toString(bytes(original).length);
        changeManifest(" " + size + " originals", " 999999999999999999 originals");
        assertRewrittenRefused("needs more space");
    }

    @Test
    void refusesADatabaseThatIsNone() throws IOException {
        byte[] letter = "Dear customer, this is no database at all.".getBytes(StandardCharsets.US_ASCII);
        Path file = Files.write(folder.resolve("letter"), letter);
        String line = text(MANIFEST).lines().skip(1).findFirst().orElseThrow();
        entries.put("tapwright.db", letter);
        changeManifest(line, Sha256.of(file).hex() + " " + letter.length + " tapwright.db");
        assertRewrittenRefused("damaged or is no database");
    }

    private void assertRewrittenRefused(String reason) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(backup))) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        assertRefused(reason);
    }

    private void assertRefused(String reason) throws IOException {
        Path target = folder.resolve("target/restored");
        Files.createDirectories(Durable.parent(target));
        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> restore(backup, target))
                .withMessageContaining(reason);
        assertThat(Durable.parent(target)).isEmptyDirectory();
        try (Stream<Path> files = Files.walk(folder)) {
            assertThat(files.filter(p -> p.toString().contains("evil"))).isEmpty();
        }
    }

    private void changeManifest(String from, String to) {
        String before = text(MANIFEST);
        assertThat(before).contains(from);
        entries.put(MANIFEST, before.replace(from, to).getBytes(StandardCharsets.UTF_8));
    }

    private String text(String entry) {
        return new String(bytes(entry), StandardCharsets.UTF_8);
    }

    private byte[] bytes(String entry) {
        return Objects.requireNonNull(entries.get(entry), entry);
    }

    private static VerifyReport restore(Path backup, Path target) {
        return new Restore(Workshop.CLOCK).restore(backup, target, Progress.SILENT);
    }

    private static Map<String, byte[]> read(Path zipFile) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (InputStream in = Files.newInputStream(zipFile);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        return entries;
    }
}
