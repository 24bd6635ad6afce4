package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.CalibrationId;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Where a calibration comes from, if there is one: a recorded tone, or the archive; not both. */
final class CalibrationChoice {

    @Option(
            names = "--calibration",
            paramLabel = "FILE=LEVEL",
            converter = StatedToneConverter.class,
            description = "Recorded tone of a calibrator and its level in dB SPL, as tone.wav=94; "
                    + "94:0.5 adds its tolerance.")
    private Optional<StatedTone> tone = Optional.empty();

    @Option(
            names = "--calibrated-by",
            paramLabel = "ID",
            converter = CalibrationIdConverter.class,
            description = "A calibration kept in the archive, by its number.")
    private Optional<CalibrationId> kept = Optional.empty();

    /** A recorded tone and what its calibrator promises. */
    record StatedTone(Path file, CalibratorTone tone) {}

    boolean isGiven() {
        return tone.isPresent() || kept.isPresent();
    }

    Optional<AppliedCalibration> find(Bench bench, Path archive, Terminal terminal) {
        if (kept.isPresent()) {
            try (OpenBench open = bench.open(archive, false, terminal.progress())) {
                return Optional.of(AppliedCalibration.of(open.showCalibration().use(kept.get())));
            }
        }
        return tone.map(stated -> AppliedCalibration.of(
                stated.file().toString(),
                bench.checkCalibration().check(stated.file(), stated.tone()).calibration()));
    }

    /** Reads a file and a level such as "tone.wav=94"; the file's name may hold "=" itself. */
    static final class StatedToneConverter implements ITypeConverter<StatedTone> {
        @Override
        public StatedTone convert(String text) {
            int equals = text.lastIndexOf('=');
            if (equals < 1) {
                throw new TypeConversionException(
                        "a calibration is a recorded tone and its level in dB, such as tone.wav=94, not '" + text
                                + "'");
            }
            return new StatedTone(
                    Path.of(text.substring(0, equals)), new ToneConverter().convert(text.substring(equals + 1)));
        }
    }

    /** Reads the number of a calibration. */
    static final class CalibrationIdConverter implements ITypeConverter<CalibrationId> {
        @Override
        public CalibrationId convert(String text) {
            try {
                return new CalibrationId(Long.parseLong(text));
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException("calibrations are numbered 1, 2, 3 and so on, not '" + text + "'");
            }
        }
    }
}
