package io.github.tapwright.archive;

import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.statistics.Estimate;
import java.sql.SQLException;

/** What a calibrator tone says, as columns. */
final class CalibrationColumns {

    private CalibrationColumns() {}

    static Insert put(Insert row, Calibration calibration) {
        Estimate fullScale = calibration.fullScaleLevel();
        return row.put("tone_level_db", calibration.tone().levelDb())
                .put("tone_tolerance_db", calibration.tone().levelToleranceDb())
                .put("full_scale_level_db", fullScale.value())
                .put("full_scale_level_u_db", fullScale.standardUncertainty())
                .put("full_scale_level_dof", fullScale.degreesOfFreedom())
                .put("tone_frequency_hz", calibration.toneFrequencyHz())
                .put("fluctuation_db", calibration.fluctuationDb())
                .put("impurity_percent", calibration.impurityPercent())
                .put("steady_s", calibration.steadySeconds())
                .put("method_version", calibration.methodVersion());
    }

    static Calibration read(Row row) throws SQLException {
        return new Calibration(
                new Estimate(
                        row.number("full_scale_level_db"),
                        row.number("full_scale_level_u_db"),
                        row.number("full_scale_level_dof")),
                new CalibratorTone(row.number("tone_level_db"), row.number("tone_tolerance_db")),
                row.number("tone_frequency_hz"),
                row.number("fluctuation_db"),
                row.number("impurity_percent"),
                row.number("steady_s"),
                row.text("method_version"));
    }

    static CalibratedInput input(Row row) throws SQLException {
        return new CalibratedInput(row.optionalText("microphone"), row.optionalText("gain"));
    }
}
