package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupTest {

    @TempDir
    Path folder;

    @Test
    void aRestoredArchiveEqualsTheOneBackedUp() throws IOException {
        Path backup = folder.resolve("backup.zip");
        Path restored = folder.resolve("restored");
        Sitting sitting;
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            sitting =
                    workshop.add(TestWav.write(folder.resolve("a.wav"), 1), TestWav.write(folder.resolve("b.wav"), 2));
            Originals originals = new Originals(new ArchiveFolder(workshop.archive.folder()));
            originals.place(originals.stage(TestWav.write(folder.resolve("c.wav"), 3)));
            workshop.archive.backUp(backup, Progress.SILENT);
        }

        VerifyReport report = new Restore(Workshop.CLOCK).restore(backup, restored, Progress.SILENT);

        assertThat(report.clean()).isTrue();
        assertThat(report.originalCount()).isEqualTo(3);
        assertThat(report.unreferenced()).hasSize(1);
        try (Workshop workshop = Workshop.in(restored)) {
            assertThat(workshop.archive.sittings().find(sitting.id())).contains(sitting);
            assertThat(workshop.archive.verify(Progress.SILENT)).isEqualTo(report);
            workshop.add(TestWav.write(folder.resolve("d.wav"), 4));
        }
        assertThat(names(folder))
                .containsExactlyInAnyOrder("a.wav", "b.wav", "c.wav", "d.wav", "archive", "restored", "backup.zip");
    }

    @Test
    void neverOverwritesABackup() throws IOException {
        Path backup = Files.writeString(folder.resolve("backup.zip"), "precious");
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> workshop.archive.backUp(backup, Progress.SILENT))
                    .withMessageContaining("exists already");
        }
        assertThat(backup).hasContent("precious");
    }

    @Test
    void aFileThatAppearsWhileABackupIsWrittenStaysAsItIs() {
        Path backup = folder.resolve("backup.zip");
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> workshop.archive.backUp(backup, (step, done, of) -> write(backup, "precious")))
                    .withMessageContaining("exists already");
        }
        assertThat(backup).hasContent("precious");
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("archive", "backup.zip");
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void makesNoBackupOfADamagedOrIncompleteArchive() throws IOException {
        Path backup = folder.resolve("backup.zip");
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            Sitting sitting = workshop.add(TestWav.write(folder.resolve("a.wav"), 1));
            Path kept = workshop.archive
                    .sittings()
                    .locate(sitting.recordings().get(0).original());
            Files.writeString(kept, "damaged");
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> workshop.archive.backUp(backup, Progress.SILENT))
                    .withMessageContaining(kept + " is damaged");
            Files.delete(kept);
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> workshop.archive.backUp(backup, Progress.SILENT))
                    .withMessageContaining(kept + " is missing");
        }
        assertThat(names(folder)).containsExactlyInAnyOrder("a.wav", "archive");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(p -> String.valueOf(p.getFileName())).toList();
        }
    }
}
