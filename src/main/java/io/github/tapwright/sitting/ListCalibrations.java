package io.github.tapwright.sitting;

import java.util.List;

/** Lists the calibrations of an archive. */
public final class ListCalibrations {

    private final CalibrationStore calibrations;

    /**
     * Joins the use case with what it needs.
     *
     * @param calibrations where calibrations are kept
     */
    public ListCalibrations(CalibrationStore calibrations) {
        this.calibrations = calibrations;
    }

    /**
     * Every calibration.
     *
     * @return oldest tone first
     */
    public List<KeptCalibration> all() {
        return calibrations.all();
    }
}
