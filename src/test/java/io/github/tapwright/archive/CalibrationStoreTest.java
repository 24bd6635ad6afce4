package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.level.Sound;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.AddCalibration;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.CalibrationRequest;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SoundFacts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Calibrations and their tones in a real archive. */
class CalibrationStoreTest {

    private static final double RATE_HZ = 8000;
    private static final CalibratedInput INPUT =
            new CalibratedInput(Optional.of("measuring microphone 3"), Optional.of("input 1, knob at 4"));

    @TempDir
    Path folder;

    @Test
    void aCalibrationComesBackAsItWasWithItsToneBitForBit() throws IOException {
        Path tone = tone("tone.wav", 1000);
        KeptCalibration kept;
        try (Workshop workshop = Workshop.in(archive())) {
            kept = add(workshop, tone);
        }
        try (Workshop workshop = Workshop.in(archive())) {
            Archive archive = workshop.archive;
            assertThat(archive.calibrations().find(kept.id())).contains(kept);
            assertThat(archive.calibrations().all()).containsExactly(kept);
            assertThat(archive.calibrations().locate(kept.tone().original())).hasSameBinaryContentAs(tone);
        }
        assertThat(kept.input()).isEqualTo(INPUT);
        assertThat(kept.takenAt()).isEqualTo(Moment.on(LocalDate.of(2026, 3, 10), ZoneOffset.UTC));
        assertThat(kept.calibration().tone()).isEqualTo(CalibratorTone.classOne(94));
        assertThat(kept.tone().fileName()).isEqualTo("tone.wav");
    }

    @Test
    void theOldestToneComesFirstWhateverTheOrderOfAdding() throws IOException {
        try (Workshop workshop = Workshop.in(archive())) {
            KeptCalibration later = addOn(workshop, tone("a.wav", 1000), 12);
            KeptCalibration earlier = addOn(workshop, tone("b.wav", 250), 11);

            assertThat(workshop.archive.calibrations().all()).containsExactly(earlier, later);
        }
    }

    @Test
    void aToneIsExpectedByTheCheckAndPartOfABackup() throws IOException {
        Path backup = folder.resolve("backup.zip");
        KeptCalibration kept;
        try (Workshop workshop = Workshop.in(archive())) {
            kept = add(workshop, tone("tone.wav", 1000));
            workshop.archive.backUp(backup, Progress.SILENT);
            assertThat(workshop.archive.verify(Progress.SILENT))
                    .isEqualTo(new VerifyReport(0, 1, 1, List.of(), List.of(), List.of(), List.of()));
        }
        VerifyReport restored =
                new Restore(Workshop.CLOCK).restore(backup, folder.resolve("restored"), Progress.SILENT);

        assertThat(restored.calibrationCount()).isEqualTo(1);
        try (Workshop workshop = Workshop.in(folder.resolve("restored"))) {
            assertThat(workshop.archive.calibrations().find(kept.id())).contains(kept);
        }
    }

    @Test
    void aDamagedToneIsFound() throws IOException {
        try (Workshop workshop = Workshop.in(archive())) {
            KeptCalibration kept = add(workshop, tone("tone.wav", 1000));
            Files.writeString(workshop.archive.calibrations().locate(kept.tone().original()), "damaged");

            assertThat(workshop.archive.verify(Progress.SILENT).problems()).hasSize(1);
        }
    }

    @Test
    void aRefusedToneLeavesNothingBehind() throws IOException {
        Path note = tone("note.wav", 82.41);
        try (Workshop workshop = Workshop.in(archive())) {
            assertThatExceptionOfType(UnreadableRecordingException.class)
                    .isThrownBy(() -> add(workshop, note))
                    .withMessage(
                            "note.wav: this recording cannot calibrate: the tone lies at 82.4 Hz; record a calibrator"
                                    + " of 1 kHz or 250 Hz; a played note cannot calibrate");
            assertThat(workshop.archive.calibrations().all()).isEmpty();
            assertThat(workshop.archive.calibrations().find(new CalibrationId(1)))
                    .isEmpty();
            assertThat(workshop.archive.verify(Progress.SILENT))
                    .isEqualTo(new VerifyReport(0, 0, 0, List.of(), List.of(), List.of(), List.of()));
        }
    }

    @Test
    void oneRecordingMayServeASittingAndACalibration() throws IOException {
        Path tone = tone("tone.wav", 1000);
        try (Workshop workshop = Workshop.in(archive())) {
            workshop.add(tone);
            add(workshop, tone);

            assertThat(workshop.archive.verify(Progress.SILENT))
                    .isEqualTo(new VerifyReport(1, 1, 1, List.of(), List.of(), List.of(), List.of()));
        }
    }

    @Test
    void aCalibrationWithdrawnIsKeptAndWhatRestsOnItSaysSo() throws IOException {
        OutOfUse why = new OutOfUse("114 was typed", Workshop.CLOCK.instant());
        Pluck pluck = new Pluck(
                0, 0.5, Optional.of(6), Optional.of(80.5), Optional.empty(), Optional.of(12.5), List.of("clipped"));
        SittingId id;
        try (Workshop workshop = Workshop.in(archive())) {
            KeptCalibration kept = add(workshop, tone("tone.wav", 1000));
            SittingStore sittings = workshop.archive.sittings();
            PluckRun run = new PluckRun(List.of(pluck), Tuning.CLASSICAL, Optional.of(kept.id()), "plucks-2");
            id = sittings.add(new NewSitting(
                    Workshop.NUMBER,
                    Moment.at(Workshop.CLOCK.instant()),
                    Workshop.CLOCK.instant(),
                    Conditions.UNKNOWN,
                    List.of(new NewSitting.NewRecording(
                            sittings.stage(TestWav.write(folder.resolve("plucks.wav"), 1)),
                            new SoundFacts("WAV", RATE_HZ, 1, 0, 1, List.of()))),
                    new NewAnalysis(Workshop.CLOCK.instant(), new Findings.OfPlucks(run))));
            assertThat(workshop.archive.calibrations().restingOn(kept.id())).containsExactly(id);
            assertThat(run(workshop, id)).isEqualTo(run);

            workshop.archive.calibrations().withdraw(kept.id(), why);

            assertThat(workshop.archive.calibrations().find(kept.id()).flatMap(KeptCalibration::withdrawn))
                    .contains(why);
            assertThat(run(workshop, id).plucks()).containsExactly(pluck);
            assertThat(run(workshop, id).withdrawn()).contains(why);
            assertThat(run(workshop, id).meaningful())
                    .extracting(Pluck::maximumSone)
                    .containsExactly(Optional.empty());
            assertThat(sittings.outlines(List.of(id)))
                    .containsExactly(SittingOutline.of(sittings.find(id).orElseThrow()));
            workshop.archive.calibrations().takeBack(kept.id(), Workshop.CLOCK.instant());
            assertThat(run(workshop, id)).isEqualTo(run);
            assertThat(workshop.archive.verify(Progress.SILENT).problems()).isEmpty();
        }
    }

    private static PluckRun run(Workshop workshop, SittingId id) {
        return workshop.archive
                .sittings()
                .find(id)
                .flatMap(s -> s.latest().findings().plucks())
                .orElseThrow();
    }

    private KeptCalibration add(Workshop workshop, Path file) {
        return addOn(workshop, file, 10);
    }

    private static KeptCalibration addOn(Workshop workshop, Path file, int dayOfMarch) {
        Moment day = Moment.on(LocalDate.of(2026, 3, dayOfMarch), ZoneOffset.UTC);
        return new AddCalibration(workshop.archive.calibrations(), TestWav.source(), Workshop.CLOCK)
                .add(
                        new CalibrationRequest(file, CalibratorTone.classOne(94), Optional.of(day), INPUT),
                        Progress.SILENT);
    }

    private Path archive() {
        return folder.resolve("archive");
    }

    private Path tone(String name, double frequencyHz) throws IOException {
        Path file = folder.resolve(name);
        Recording tone = Recording.of(new SampleRate(RATE_HZ), Sound.sine(RATE_HZ, 5, frequencyHz, -20));
        WavWriter.write(file, tone, WavSamples.INT_24);
        return file;
    }
}
