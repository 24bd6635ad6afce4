package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.CaptureStore;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.SoundBlock;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An archive on a real disk that is full, or becomes full in the middle of the work, or cannot be written. */
class FullDiskTest {

    @TempDir
    Path folder;

    private SmallDisk disk;
    private Path place;

    @BeforeEach
    void mount() throws IOException {
        disk = SmallDisk.in(Files.createDirectory(folder.resolve("disk")));
        place = Files.createDirectory(disk.folder().resolve("place"));
    }

    @AfterEach
    void unmount() {
        if (disk != null) {
            disk.close();
        }
    }

    /** Says nothing to anybody. */
    private static final class Silent implements WriteJob.Said {

        private final List<SittingId> kept = new ArrayList<>();

        @Override
        public void kept(SittingId id) {
            kept.add(id);
        }

        @Override
        public void done(String name) {
            assertThat(name).isNotEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void howeverLittleIsFreeItSaysSoAndSucceedsOnceThereIsRoom(WriteJob job) throws IOException {
        job.prepare(place);
        int full = 0;
        Silent said = new Silent();
        for (int freeKilobytes = 0; freeKilobytes < 400; freeKilobytes += 24) {
            disk.fill(freeKilobytes);
            try {
                job.run(place, said);
                break;
            } catch (ArchiveException e) {
                full++;
                assertThat(e.getMessage()).containsAnyOf("is full; free some space", "needs more space");
            } finally {
                disk.free();
            }
            looksWhole(said);
        }
        assertThat(full).isPositive();
        Files.deleteIfExists(place.resolve("copy.zip"));
        if (!Files.exists(place.resolve("again"))) {
            job.run(place, said);
        }
        looksWhole(said);
        assertThat(place.toFile().list()).allMatch(name -> !name.contains("partial") && !name.contains("restoring"));
    }

    private void looksWhole(Silent said) {
        try (Workshop workshop = Workshop.in(WriteJob.archive(place))) {
            assertThat(workshop.archive.verify(Progress.SILENT).problems()).isEmpty();
            said.kept.forEach(
                    id -> assertThat(workshop.archive.sittings().find(id)).isPresent());
        }
    }

    @Test
    void whatWasRecordedBeforeTheDiskWasFullIsKept() throws IOException {
        LiveFormat format = new LiveFormat(48_000, 1, 16);
        try (Workshop workshop = Workshop.in(WriteJob.archive(place))) {
            CaptureStore captures = workshop.archive.captures();
            disk.fill(600);
            int blocks = 0;
            try (Capture capture = captures.begin(notes(format))) {
                for (; blocks < 1000; blocks++) {
                    capture.append(new SoundBlock(format, new byte[9600]));
                }
            } catch (ArchiveException e) {
                assertThat(e.getMessage()).contains("is full; free some space");
            }
            disk.free();

            assertThat(blocks).isBetween(10, 999);
            LeftCapture left = captures.leftBehind().get(0);
            assertThat(left.frames()).isGreaterThanOrEqualTo(4800L * blocks);
            Sitting sitting = workshop.keepCapture()
                    .keep(left.id(), n -> n, Progress.SILENT)
                    .sitting();
            assertThat(sitting.recordings().get(0).facts().durationSeconds()).isGreaterThanOrEqualTo(0.1 * blocks);
            assertThat(workshop.archive.verify(Progress.SILENT).problems()).isEmpty();
        }
    }

    /** With some of these amounts the database has room and the file has not. */
    @ParameterizedTest
    @ValueSource(ints = {0, 4, 8, 12, 16, 20, 24, 28, 32, 36, 40, 44, 48})
    void aRecordingThatHasNoRoomToBeginIsSaidAtOnceAndLeavesNothing(int kilobytes) throws IOException {
        LiveFormat format = new LiveFormat(48_000, 1, 16);
        try (Workshop workshop = Workshop.in(WriteJob.archive(place))) {
            CaptureStore captures = workshop.archive.captures();
            disk.fill(kilobytes);
            boolean begun = false;
            try (Capture capture = captures.begin(notes(format))) {
                begun = capture.id().number() > 0;
            } catch (ArchiveException e) {
                assertThat(e.getMessage()).contains("is full; free some space");
            }
            disk.free();

            assertThat(workshop.archive.verify(Progress.SILENT).waiting())
                    .hasSize(begun ? 1 : 0)
                    .allMatch(w -> !w.running());
            assertThat(workshop.archive.verify(Progress.SILENT).problems()).isEmpty();
        }
    }

    private static CaptureNotes notes(LiveFormat format) {
        return new CaptureNotes(
                Workshop.NUMBER,
                new Procedure.BodyTaps(TapSettings.STANDARD),
                Conditions.UNKNOWN,
                "a microphone",
                format,
                Workshop.CLOCK.instant());
    }

    @ParameterizedTest
    @EnumSource
    void onADiskThatCannotBeWrittenItSaysSoAndSucceedsOnceItCan(WriteJob job) {
        job.prepare(place);
        Silent said = new Silent();
        disk.makeReadOnly();

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> job.run(place, said))
                .withMessageContaining("no permission to write");

        disk.makeWritable();
        job.run(place, said);
        looksWhole(said);
    }
}
