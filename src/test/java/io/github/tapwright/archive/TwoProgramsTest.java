package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SittingSummary;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One archive open more than once, and what happens when it cannot be written. */
class TwoProgramsTest {

    @TempDir
    Path folder;

    @Test
    void eachSeesWhatTheOtherKept() {
        try (Workshop one = Workshop.in(archive());
                Workshop two = Workshop.in(archive())) {
            one.add(TestWav.write(folder.resolve("a.wav"), 1));
            two.add(TestWav.write(folder.resolve("b.wav"), 2));

            assertThat(one.archive.sittings().list(Optional.empty())).hasSize(2);
            assertThat(two.archive.sittings().list(Optional.empty())).hasSize(2);
        }
    }

    @Test
    void severalMayCreateAndFillOneArchiveAtOnce() throws Exception {
        int programs = 6;
        int sittings = 5;
        inParallel(programs, program -> {
            try (Archive archive = Archive.open(archive(), Workshop.CLOCK)) {
                archive.instruments()
                        .add(Instrument.of(new ShopNumber("made by " + program), InstrumentKind.CLASSICAL));
            }
            return program;
        });
        Workshop.in(archive()).close();
        inParallel(programs, program -> {
            try (Workshop workshop = Workshop.in(archive())) {
                for (int i = 0; i < sittings; i++) {
                    // Half of the recordings are the same in all programs, which then race for one original.
                    int seed = i % 2 == 0 ? i : 100 * program + i;
                    workshop.add(TestWav.write(folder.resolve(program + ".wav"), seed));
                }
            }
            return program;
        });

        try (Workshop workshop = Workshop.in(archive())) {
            List<SittingSummary> all = workshop.archive.sittings().list(Optional.empty());
            assertThat(all).hasSize(programs * sittings);
            assertThat(workshop.archive.instruments().all()).hasSize(programs + 1);
            VerifyReport report = workshop.archive.verify(Progress.SILENT);
            assertThat(report.problems()).isEmpty();
            assertThat(report.originalCount()).isEqualTo(3 + 2 * programs);
            assertThat(report.temporary()).isEmpty();
        }
    }

    @Test
    void saysSoWhenAnotherProgramHoldsTheLock() {
        Workshop.in(archive()).close();
        Path file = archive().resolve("tapwright.db");
        try (Database holder = Database.open(file);
                Database waiter = Database.open(file, 50)) {
            holder.withoutTransaction("BEGIN IMMEDIATE");
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> waiter.write(connection -> 1))
                    .withMessageContaining("is locked by another program");
            holder.withoutTransaction("ROLLBACK");
            assertThat(waiter.<Integer>write(connection -> 1)).isEqualTo(1);
        }
    }

    @Test
    void saysSoWhenTheDiskIsFullAndKeepsNothingByHalves() {
        Workshop.in(archive()).close();
        try (Database database = Database.open(archive().resolve("tapwright.db"))) {
            database.withoutTransaction("PRAGMA max_page_count = 1");
            InstrumentTable table = new InstrumentTable(database);
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> IntStream.range(0, 10_000)
                            .forEach(
                                    i -> table.add(Instrument.of(new ShopNumber("number " + i), InstrumentKind.OTHER))))
                    .withMessageContaining("is full; free some space");
        }
        try (Workshop workshop = Workshop.in(archive())) {
            assertThat(workshop.archive.verify(Progress.SILENT).clean()).isTrue();
        }
    }

    @Test
    void tellsTroubleWithFilesApart() {
        Path file = Path.of("taps.wav");

        assertThat(Trouble.with(file, new AccessDeniedException("taps.wav")))
                .hasMessageContaining("give yourself write permission");
        assertThat(Trouble.with(file, new FileSystemException("taps.wav", null, "No space left on device")))
                .hasMessageContaining("is full");
        assertThat(Trouble.with(file, new FileSystemException("taps.wav", null, "Read-only file system")))
                .hasMessageContaining("no permission to write");
        assertThat(Trouble.with(file, new IOException("Input/output error")))
                .hasMessageContaining("Input/output error")
                .hasMessageContaining("check the disk");
    }

    private Path archive() {
        return folder.resolve("archive");
    }

    /** Something a program does. */
    @FunctionalInterface
    private interface Program {

        int run(int number);
    }

    private static void inParallel(int count, Program program) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(count);
        try {
            List<Callable<Integer>> tasks = new ArrayList<>();
            IntStream.range(0, count).forEach(i -> tasks.add(() -> program.run(i)));
            for (Future<Integer> future : threads.invokeAll(tasks)) {
                future.get();
            }
        } finally {
            threads.shutdown();
        }
    }
}
