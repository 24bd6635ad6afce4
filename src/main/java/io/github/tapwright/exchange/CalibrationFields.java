package io.github.tapwright.exchange;

import io.github.tapwright.level.Calibration;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.sitting.KeptCalibration;
import java.util.List;
import java.util.stream.Stream;

/** The named properties of calibrations, kept or merely applied. */
final class CalibrationFields {

    private static final List<Field<Calibration>> FIGURES = List.of(
            Field.of("tone_level_db", c -> c.tone().levelDb()),
            Field.of("tone_tolerance_db", c -> c.tone().levelToleranceDb()),
            Field.of("tone_frequency_hz", Calibration::toneFrequencyHz),
            Field.of("full_scale_level_db", c -> c.fullScaleLevel().value()),
            Field.of("full_scale_level_u_db", c -> c.fullScaleLevel().standardUncertainty()),
            Field.of("fluctuation_db", Calibration::fluctuationDb),
            Field.of("impurity_percent", Calibration::impurityPercent),
            Field.of("steady_s", Calibration::steadySeconds),
            Field.of("method_version", Calibration::methodVersion));

    private static final List<Field<CalibratedInput>> INPUT =
            List.of(Field.maybe("microphone", CalibratedInput::microphone), Field.maybe("gain", CalibratedInput::gain));

    static final List<Field<AppliedCalibration>> APPLIED = joined(
            List.of(
                    Field.maybe("id", a -> a.id().map(id -> id.number())),
                    Field.maybe(
                            "taken_at", a -> a.takenAt().map(t -> t.instant().toString())),
                    Field.of("tone_file", AppliedCalibration::toneFile)),
            Field.within(INPUT, AppliedCalibration::input),
            Field.within(FIGURES, AppliedCalibration::calibration));

    static final List<Field<KeptCalibration>> KEPT = joined(
            List.of(
                    Field.of("id", k -> k.id().number()),
                    Field.of("taken_at", k -> k.takenAt().instant().toString()),
                    Field.of("time_known", k -> k.takenAt().timeKnown()),
                    Field.of("added_at", k -> k.addedAt().toString()),
                    Field.of("tone_file", k -> k.tone().fileName()),
                    Field.of("sha256", k -> k.tone().original().sha256())),
            Field.within(INPUT, KeptCalibration::input),
            Stream.concat(
                            Field.<KeptCalibration, Calibration>within(FIGURES, KeptCalibration::calibration).stream(),
                            OutOfUseFields.of("withdrawn", KeptCalibration::withdrawn).stream())
                    .toList());

    private CalibrationFields() {}

    private static <T> List<Field<T>> joined(List<Field<T>> a, List<Field<T>> b, List<Field<T>> c) {
        return Stream.of(a, b, c).flatMap(List::stream).toList();
    }
}
