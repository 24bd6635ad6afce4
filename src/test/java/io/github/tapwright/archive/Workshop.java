package io.github.tapwright.archive;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.level.Sound;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.sitting.AddCalibration;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.sitting.CalibrationRequest;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.sitting.live.KeepCapture;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** An open archive with one invented instrument, and short ways to fill it. */
final class Workshop implements AutoCloseable {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-14T09:26:53.5Z"), ZoneOffset.UTC);
    static final ShopNumber NUMBER = new ShopNumber("T-17");

    final Archive archive;

    private Workshop(Archive archive) {
        this.archive = archive;
    }

    static Workshop in(Path folder) {
        return in(folder, Migration.known());
    }

    static Workshop in(Path folder, List<Migration> migrations) {
        Archive archive = Archive.open(folder, CLOCK, migrations);
        if (archive.instruments().find(NUMBER).isEmpty()) {
            archive.instruments().add(Instrument.of(NUMBER, InstrumentKind.CLASSICAL));
        }
        return new Workshop(archive);
    }

    Sitting add(Path... files) {
        return addSitting()
                .add(
                        new SittingRequest(
                                NUMBER,
                                Optional.empty(),
                                Conditions.UNKNOWN,
                                List.of(files),
                                new Procedure.BodyTaps(TapSettings.STANDARD)),
                        Progress.SILENT);
    }

    /** Keeps a calibration of a tone, which is written unless it is there. */
    KeptCalibration calibrate(Path tone) {
        try {
            if (!Files.exists(tone)) {
                double rateHz = 8000;
                WavWriter.write(
                        tone,
                        Recording.of(new SampleRate(rateHz), Sound.sine(rateHz, 5, 1000, -20)),
                        WavSamples.INT_24);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new AddCalibration(archive.calibrations(), TestWav.source(), CLOCK)
                .add(
                        new CalibrationRequest(
                                tone, CalibratorTone.classOne(94), Optional.empty(), CalibratedInput.UNKNOWN),
                        Progress.SILENT);
    }

    AddSitting addSitting() {
        return new AddSitting(
                archive.instruments(), archive.sittings(), archive.calibrations(), TestWav.source(), CLOCK);
    }

    KeepCapture keepCapture() {
        return new KeepCapture(archive.captures(), archive.sittings(), addSitting());
    }

    @Override
    public void close() {
        archive.close();
    }
}
