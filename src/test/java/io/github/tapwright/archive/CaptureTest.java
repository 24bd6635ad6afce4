package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.WrittenDown;
import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.CaptureStore;
import io.github.tapwright.sitting.live.KeepCapture;
import io.github.tapwright.sitting.live.KeptCapture;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.Loss;
import io.github.tapwright.sitting.live.SoundBlock;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CaptureTest {

    private static final LiveFormat FORMAT = new LiveFormat(48_000, 1, 24);

    @TempDir
    Path folder;

    private Workshop workshop;
    private CaptureStore captures;

    @BeforeEach
    void open() {
        workshop = Workshop.in(folder.resolve("archive"));
        captures = workshop.archive.captures();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private static CaptureNotes notes(Procedure procedure) {
        return new CaptureNotes(
                Workshop.NUMBER, procedure, Conditions.UNKNOWN, "a microphone", FORMAT, Workshop.CLOCK.instant());
    }

    private static CaptureNotes notes() {
        return notes(new Procedure.BodyTaps(TapSettings.STANDARD));
    }

    private static SoundBlock noise(long seed, int frames) {
        byte[] bytes = new byte[frames * FORMAT.frameBytes()];
        new Random(seed).nextBytes(bytes);
        return new SoundBlock(FORMAT, bytes);
    }

    private Path write(int blocks) {
        try (Capture capture = captures.begin(notes())) {
            for (int b = 0; b < blocks; b++) {
                capture.append(noise(b, 961));
            }
        }
        return captures.leftBehind().get(0).file();
    }

    private static double[] read(Path file) {
        try (OpenedAudio audio = AudioFile.open(file)) {
            double[] samples = Recording.readAll(audio, 10_000_000).channel(0);
            assertThat(audio.notices()).isEmpty();
            return samples;
        }
    }

    @Test
    void whatIsReadBackIsWhatTheSoundCardGave() {
        double[] read = read(write(7));

        assertThat(read).hasSize(7 * 961);
        for (int b = 0; b < 7; b++) {
            double[] given = noise(b, 961).samples()[0];
            for (int n = 0; n < given.length; n++) {
                assertThat(read[b * 961 + n]).isEqualTo(given[n]);
            }
        }
    }

    @Test
    void withAFileInPlaceOfItsFolderARecordingIsRefusedAtOnceAndDoesNotLookAsIfItRan() throws IOException {
        Path place = folder.resolve("archive/captures");
        Files.deleteIfExists(place);
        Files.writeString(place, "not a folder");

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> captures.begin(notes()))
                .withMessageContaining("captures is a file")
                .withMessageContaining("move the file away");
        Files.delete(place);

        assertThat(write(7)).exists();
        assertThat(captures.leftBehind()).singleElement().matches(LeftCapture::finished);
    }

    @Test
    void aRecordingWhoseFileCannotBeMadeLeavesNothingThatWaitsAndTouchesNobodysFile() throws IOException {
        Path taken = write(1);
        captures.setAside(captures.leftBehind().get(0).id());
        Path next = taken.resolveSibling(taken.getFileName().toString().replace("-1.wav", "-2.wav"));
        Files.writeString(next, "somebody's file");

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> captures.begin(notes()))
                .withMessageContaining("check the disk");

        assertThat(workshop.archive.verify(Progress.SILENT).waiting()).isEmpty();
        assertThat(next).hasContent("somebody's file");
    }

    @Test
    void theFileIsAWavFileWhileItGrows() throws IOException {
        try (Capture capture = captures.begin(notes())) {
            for (int b = 0; b < 100; b++) {
                capture.append(noise(b, 960));
            }
            Path copy = folder.resolve("copy.wav");
            try (Stream<Path> files = Files.list(folder.resolve("archive/captures"))) {
                Files.copy(files.findFirst().orElseThrow(), copy);
            }
            try (OpenedAudio audio = AudioFile.open(copy)) {
                // Half a second at most is not counted in the head yet.
                assertThat(Recording.readAll(audio, 10_000_000).length()).isBetween(96_000 - 24_000, 96_000);
            }
        }
    }

    @Test
    void aRecordingThatRunsIsNotOffered() {
        try (Capture capture = captures.begin(notes())) {
            capture.append(noise(1, 960));
            assertThat(captures.leftBehind()).isEmpty();
            assertThatExceptionOfType(RefusedEntryException.class).isThrownBy(() -> captures.mend(capture.id()));
        }
        assertThat(captures.leftBehind()).singleElement().matches(LeftCapture::finished);
    }

    @Test
    void aFileCutAnywhereIsMended() throws IOException {
        Path file = write(20);
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(8);
        for (int i = 0; i < 20; i++) {
            int length = 80 + random.nextInt(whole.length - 80);
            Files.write(file, Arrays.copyOf(whole, length), StandardOpenOption.TRUNCATE_EXISTING);

            LeftCapture mended = captures.mend(captures.leftBehind().get(0).id());

            assertThat(mended.frames()).isEqualTo((length - 80) / 3);
            assertThat(read(file)).hasSize((length - 80) / 3);
        }
    }

    static Stream<Procedure> procedures() {
        return Stream.of(
                new Procedure.BodyTaps(
                        TapSettings.STANDARD.withBand(70, 800).withSetAside(List.of(new SetAside(0, 3.25)))),
                new Procedure.NoteRun(Fingerboard.Settings.STANDARD),
                new Procedure.OpenPlucks(Fingerboard.Settings.STANDARD.tuning(), Optional.empty()));
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void everythingKnownAboutItIsKept(Procedure procedure) {
        Loss loss = new Loss(1.5, 480, "a reason");
        CaptureNotes later = notes(procedure)
                .with(new Conditions(
                        Optional.empty(),
                        new Air(Optional.of(21.5), Optional.of(45.0)),
                        Conditions.UNKNOWN.strings(),
                        Conditions.UNKNOWN.hole(),
                        Conditions.UNKNOWN.placing(),
                        Conditions.UNKNOWN.microphone(),
                        Optional.empty(),
                        Optional.of("somebody"),
                        Optional.empty()));
        try (Capture capture = captures.begin(notes())) {
            capture.note(later);
            capture.note(loss);
        }

        LeftCapture left = captures.leftBehind().get(0);

        assertThat(left.notes()).isEqualTo(later);
        assertThat(left.losses()).containsExactly(loss);
    }

    @Test
    void aKeptRecordingIsAnOriginalBitForBitAndLeavesTheFolder() throws IOException {
        Path file = write(60);
        byte[] bytes = Files.readAllBytes(file);
        try (Capture capture = captures.begin(notes())) {
            capture.append(noise(99, 48_000));
            capture.note(new Loss(0.5, 480, "the test says so"));
        }
        LeftCapture second = captures.leftBehind().get(1);
        KeepCapture keeping = workshop.keepCapture();

        Sitting first = keeping.keep(captures.leftBehind().get(0).id(), n -> n, Progress.SILENT)
                .sitting();
        Sitting lossy = keeping.keep(second.id(), n -> n, Progress.SILENT).sitting();

        Original original = first.recordings().get(0).original();
        assertThat(Files.readAllBytes(workshop.archive.sittings().locate(original)))
                .isEqualTo(bytes);
        assertThat(first.takenAt().instant()).isEqualTo(Workshop.CLOCK.instant());
        assertThat(lossy.recordings().get(0).facts().notices()).anyMatch(n -> n.contains("480 samples"));
        assertThat(captures.leftBehind()).isEmpty();
        assertThat(file).doesNotExist();
        assertThat(workshop.archive.verify(Progress.SILENT).clean()).isTrue();
    }

    /** The second program keeps the recording and its maker puts the date right while the first is about to keep it. */
    @Test
    void aRecordingKeptAlreadyIsFoundUnderItsFirstDateToo() {
        write(60);
        LeftCapture left = captures.leftBehind().get(0);
        try (Workshop other = Workshop.in(folder.resolve("archive"))) {
            KeptCapture kept = workshop.keepCapture().keep(left.id(), n -> n, (step, done, of) -> {
                if (step.equals("keeping the sitting")) {
                    Sitting first = other.keepCapture()
                            .keep(left.id(), n -> n, Progress.SILENT)
                            .sitting();
                    Moment earlier = Moment.at(first.takenAt().instant().minusSeconds(86_400));
                    other.archive
                            .sittings()
                            .correct(first.id(), new WrittenDown(first.instrument(), earlier, first.conditions()));
                }
            });

            assertThat(kept.before()).isTrue();
            assertThat(workshop.archive.sittings().list(Optional.empty())).hasSize(1);
        }
    }

    /** The second program keeps the recording while the first, which has looked already, is about to. */
    @Test
    void twoProgramsThatKeepOneRecordingMakeOneSitting() {
        Path file = write(60);
        LeftCapture left = captures.leftBehind().get(0);
        try (Workshop other = Workshop.in(folder.resolve("archive"))) {
            List<KeptCapture> kept = new ArrayList<>();
            kept.add(workshop.keepCapture().keep(left.id(), n -> n, (step, done, of) -> {
                if (step.equals("keeping the sitting")) {
                    kept.add(other.keepCapture().keep(left.id(), n -> n, Progress.SILENT));
                }
            }));

            assertThat(kept).extracting(KeptCapture::before).containsExactly(false, true);
            assertThat(kept.get(1).sitting()).isEqualTo(kept.get(0).sitting());
        }
        assertThat(workshop.archive.sittings().list(Optional.empty())).hasSize(1);
        assertThat(captures.leftBehind()).isEmpty();
        assertThat(file).doesNotExist();
        assertThat(workshop.archive.verify(Progress.SILENT).clean()).isTrue();
    }

    /** A program that is killed after it made the sitting and before it let go of the recording. */
    private Sitting keepAndBeKilled(LeftCapture left) throws IOException {
        Path aside = Files.copy(left.file(), folder.resolve("aside.wav"));
        Sitting made =
                workshop.keepCapture().keep(left.id(), n -> n, Progress.SILENT).sitting();
        Files.move(aside, left.file());
        try (Database other = Database.open(folder.resolve("archive/tapwright.db"))) {
            other.write(connection -> Insert.into("capture")
                    .put("state", "waiting")
                    .updateWhere(connection, "id", left.id().number()));
        }
        return made;
    }

    @Test
    void keptAgainAfterACrashItIsInOneSittingAndReleased() throws IOException {
        write(60);
        LeftCapture left = captures.leftBehind().get(0);
        Sitting made = keepAndBeKilled(left);

        KeptCapture again = workshop.keepCapture().keep(left.id(), n -> n, Progress.SILENT);

        assertThat(again.before()).isTrue();
        assertThat(again.sitting()).isEqualTo(made);
        assertThat(again.words()).startsWith("Sitting 1 of instrument T-17 holds this recording already");
        assertThat(workshop.archive.sittings().list(Optional.empty())).hasSize(1);
        assertThat(captures.leftBehind()).isEmpty();
        assertThat(left.file()).doesNotExist();
    }

    @Test
    void theSameSoundInASittingOfItsOwnIsNotTakenForTheRecordingKept() throws IOException {
        write(60);
        write(50);
        LeftCapture left = captures.leftBehind().get(0);
        Path exported = Files.createDirectory(folder.resolve("mine"))
                .resolve(left.file().getFileName());
        captures.export(left.id(), exported);
        captures.export(left.id(), folder.resolve("taps.wav"));
        captures.export(captures.leftBehind().get(1).id(), folder.resolve("more.wav"));
        workshop.add(folder.resolve("taps.wav"));
        workshop.add(exported, folder.resolve("more.wav"));

        KeptCapture kept = workshop.keepCapture().keep(left.id(), n -> n, Progress.SILENT);

        assertThat(kept.before()).isFalse();
        assertThat(kept.sitting().id().number()).isEqualTo(3);
    }

    @Test
    void aRecordingWhoseOriginalIsDamagedIsNotReleased() throws IOException {
        write(60);
        LeftCapture left = captures.leftBehind().get(0);
        Original original = keepAndBeKilled(left).recordings().get(0).original();
        Path place = workshop.archive.sittings().locate(original);
        byte[] bytes = Files.readAllBytes(place);
        bytes[200] ^= 1;
        Files.write(place, bytes);

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> workshop.keepCapture().keep(left.id(), n -> n, Progress.SILENT))
                .withMessageContaining("put a good copy in its place");
        assertThat(left.file()).exists();
        assertThat(captures.leftBehind()).hasSize(1);
    }

    @Test
    void nothingIsReleasedThatIsNotKept() {
        Path file = write(3);
        LeftCapture left = captures.leftBehind().get(0);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> captures.release(left.id(), new Original("0".repeat(64), 3, "wav")));
        assertThat(file).exists();
        assertThat(captures.leftBehind()).hasSize(1);
    }

    @Test
    void exportedItWaitsOnAndSetAsideItStaysOnDisk() {
        write(3);
        LeftCapture left = captures.leftBehind().get(0);
        Path target = folder.resolve("mine.wav");

        captures.export(left.id(), target);
        assertThat(read(target)).hasSize(3 * 961);
        assertThatExceptionOfType(RefusedEntryException.class).isThrownBy(() -> captures.export(left.id(), target));
        Path aside = captures.setAside(left.id());

        assertThat(read(aside)).hasSize(3 * 961);
        assertThat(captures.leftBehind()).isEmpty();
    }

    @Test
    void anUnknownInstrumentIsRefused() {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> captures.begin(notes().with(new ShopNumber("nobody's"))));
    }
}
