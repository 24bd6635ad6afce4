package io.github.tapwright.exchange;

import io.github.tapwright.sitting.KeptCalibration;
import java.util.List;

/** The JSON of the calibrations an archive keeps. */
public final class CalibrationJson {

    private CalibrationJson() {}

    /**
     * One calibration.
     *
     * @param calibration the calibration
     * @return an object
     */
    public static String one(KeptCalibration calibration) {
        return JsonText.of(JsonText.object(CalibrationFields.KEPT, calibration));
    }

    /**
     * Calibrations as an array.
     *
     * @param calibrations the calibrations
     * @return an array of objects
     */
    public static String all(List<KeptCalibration> calibrations) {
        return JsonText.of(JsonText.array(CalibrationFields.KEPT, calibrations));
    }
}
