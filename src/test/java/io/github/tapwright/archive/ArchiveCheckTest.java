package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.archive.VerifyReport.WaitingRecording;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.CaptureStore;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveCheckTest {

    private final CaptureNotes notes = new CaptureNotes(
            Workshop.NUMBER,
            new Procedure.BodyTaps(TapSettings.STANDARD),
            Conditions.UNKNOWN,
            "a microphone",
            LiveFormat.STANDARD,
            Workshop.CLOCK.instant());

    @TempDir
    Path folder;

    private Workshop workshop;
    private Path kept;

    @BeforeEach
    void fill() {
        workshop = Workshop.in(folder.resolve("archive"));
        Original original = workshop.add(
                        TestWav.write(folder.resolve("taps.wav"), 1), TestWav.write(folder.resolve("more.wav"), 2))
                .recordings()
                .get(0)
                .original();
        kept = workshop.archive.sittings().locate(original);
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void aSoundArchiveIsClean() {
        assertThat(check()).isEqualTo(new VerifyReport(1, 0, 2, List.of(), List.of(), List.of(), List.of()));
        assertThat(check().clean()).isTrue();
    }

    @Test
    void aFlippedBitIsNamed() throws IOException {
        byte[] bytes = Files.readAllBytes(kept);
        bytes[bytes.length / 2] ^= 1;
        Files.write(kept, bytes);

        assertThat(check().problems()).singleElement().asString().contains(kept.toString(), "damaged");
    }

    @Test
    void aMissingOriginalIsNamed() throws IOException {
        Files.delete(kept);

        assertThat(check().problems()).singleElement().asString().contains(kept.toString(), "is missing");
    }

    @Test
    void aShortenedOriginalIsNamed() throws IOException {
        byte[] bytes = Files.readAllBytes(kept);
        Files.write(kept, Arrays.copyOf(bytes, bytes.length - 1));

        assertThat(check().problems()).singleElement().asString().contains(kept.toString(), "wrong size");
    }

    @Test
    void whatAStoppedProgramLeftIsListedAndNoError() throws IOException {
        Originals originals = new Originals(new ArchiveFolder(workshop.archive.folder()));
        originals.place(originals.stage(TestWav.write(folder.resolve("placed.wav"), 3)));
        originals.stage(TestWav.write(folder.resolve("begun.wav"), 4));

        VerifyReport report = check();

        assertThat(report.clean()).isTrue();
        assertThat(report.unreferenced())
                .singleElement()
                .asString()
                .startsWith("originals")
                .endsWith(".wav");
        assertThat(report.temporary()).singleElement().asString().endsWith("begun.wav");
    }

    @Test
    void recordingsThatRunOrWaitAreNamedAndNoError() throws IOException {
        CaptureStore captures = workshop.archive.captures();
        captures.begin(notes).close();
        Path leftOver = Files.createFile(folder.resolve("archive/captures/let-go-of.wav"));
        try (Capture running = captures.begin(notes)) {
            VerifyReport report = check();

            assertThat(report.clean()).isTrue();
            assertThat(report.waiting()).extracting(w -> w.id().number()).containsExactly(1L, 2L);
            assertThat(report.waiting()).extracting(WaitingRecording::running).containsExactly(false, true);
            assertThat(report.waiting().get(1).id()).isEqualTo(running.id());
            assertThat(report.waiting())
                    .allSatisfy(w -> assertThat(folder.resolve("archive").resolve(w.file()))
                            .exists());
            assertThat(report.temporary()).containsExactly(Path.of("captures", String.valueOf(leftOver.getFileName())));
        }
    }

    @Test
    void whatIsKnownOfAWaitingRecordingAndCannotBeReadIsNamed() {
        workshop.archive.captures().begin(notes).close();
        change("UPDATE capture SET started_at = 'yesterday'");

        assertThat(check().problems())
                .anySatisfy(p -> assertThat(p).contains("recordings that wait cannot be read", "yesterday"));
    }

    @Test
    void aStrangerAmongTheOriginalsIsNamed() throws IOException {
        Path stranger = Files.writeString(kept.resolveSibling("holiday.jpg"), "x");

        assertThat(check().problems()).singleElement().asString().contains(stranger.toString());
    }

    @Test
    void halfASittingAndABrokenReferenceAreNamed() {
        try (Database other = Database.open(folder.resolve("archive/tapwright.db"))) {
            other.withoutTransaction("PRAGMA foreign_keys = OFF");
            other.withoutTransaction("DELETE FROM recording");
            other.withoutTransaction("UPDATE sitting SET instrument_id = 77");
        }

        assertThat(check().problems())
                .anySatisfy(p -> assertThat(p).contains("sitting 1 has no recording"))
                .anySatisfy(p -> assertThat(p).contains("a row of sitting refers to something that is gone"));
    }

    @Test
    void aChangedCellIsNamedAlthoughItCanBeRead() {
        change("UPDATE recording SET file_name = 'tapt.wav' WHERE place = 0");

        assertThat(check().problems())
                .containsExactly("database: what stands in recording is not what was written there");
    }

    @Test
    void whatCannotBeReadIsNamedAndHidesNothingElse() throws IOException {
        change("UPDATE sitting SET added_at = 'yesterday'");
        Files.delete(kept);

        assertThat(check().problems())
                .anySatisfy(p -> assertThat(p).contains("sitting 1 cannot be read", "yesterday"))
                .anySatisfy(p -> assertThat(p).contains(kept.toString(), "is missing"));
    }

    private void change(String sql) {
        try (Database other = Database.open(folder.resolve("archive/tapwright.db"))) {
            other.withoutTransaction(sql);
        }
    }

    private VerifyReport check() {
        return workshop.archive.verify(Progress.SILENT);
    }
}
