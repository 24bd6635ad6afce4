package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.tap.TapSettings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another program, a real one, holds the database's lock. */
class LockedDatabaseTest {

    @TempDir
    Path folder;

    private Path archive;
    private Path sound;
    private Process holder;

    @BeforeEach
    void hold() throws IOException {
        archive = folder.resolve("archive");
        sound = TestWav.writeRoom(folder.resolve("taps.wav"), 1);
        try (Workshop workshop = Workshop.in(archive)) {
            workshop.add(TestWav.writeRoom(folder.resolve("before.wav"), 2));
        }
        holder = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dorg.sqlite.tmpdir=" + folder,
                        "-cp",
                        DisturbedJob.classPath(),
                        HoldLockMain.class.getName(),
                        archive.resolve(ArchiveFolder.DATABASE).toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader said = holder.inputReader(StandardCharsets.UTF_8);
        assertThat(said.readLine()).isEqualTo("held");
    }

    @AfterEach
    void letGo() throws InterruptedException {
        holder.toHandle().destroyForcibly();
        holder.waitFor();
    }

    @Test
    void whoIsTiredOfWaitingSaysSoAndHasKeptNothingByHalves() throws Exception {
        ArchiveFolder place = new ArchiveFolder(archive);
        try (Database impatient = Database.open(place.database(), 100)) {
            Originals originals = new Originals(place);
            AddSitting adding = new AddSitting(
                    new InstrumentTable(impatient),
                    new SittingTables(impatient, originals, new OutlineMemory()),
                    new CalibrationTables(impatient, originals),
                    TestWav.source(),
                    Workshop.CLOCK);
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> adding.add(request(), Progress.SILENT))
                    .withMessageContaining("is locked by another program; let it finish or close it");
            assertThat(new SittingTables(impatient, originals, new OutlineMemory()).list(Optional.empty()))
                    .hasSize(1);
            letGo();
            assertThat(adding.add(request(), Progress.SILENT).id().number()).isEqualTo(2);
        }
        try (Workshop workshop = Workshop.in(archive)) {
            assertThat(workshop.archive.verify(Progress.SILENT))
                    .isEqualTo(new VerifyReport(2, 0, 2, List.of(), List.of(), List.of(), List.of()));
        }
    }

    @Test
    void whoWaitsGetsItsTurn() {
        try (Workshop workshop = Workshop.in(archive)) {
            CompletableFuture<Void> later = CompletableFuture.runAsync(
                    this::end, CompletableFuture.delayedExecutor(700, TimeUnit.MILLISECONDS));

            assertThat(workshop.add(sound).id().number()).isEqualTo(2);
            later.join();
        }
    }

    private void end() {
        try {
            holder.getOutputStream().close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theLockOfAKilledProgramIsGone() throws Exception {
        letGo();
        try (Workshop workshop = Workshop.in(archive)) {
            assertThat(workshop.add(sound).id().number()).isEqualTo(2);
            assertThat(workshop.archive.verify(Progress.SILENT).problems()).isEmpty();
        }
    }

    private SittingRequest request() {
        return new SittingRequest(
                Workshop.NUMBER,
                Optional.empty(),
                Conditions.UNKNOWN,
                List.of(sound),
                new Procedure.BodyTaps(TapSettings.STANDARD));
    }
}
