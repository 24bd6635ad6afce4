package io.github.tapwright.sitting;

import java.util.List;
import java.util.Optional;

/** Keeps calibrations with their recorded tones, bit for bit; they are only ever added. */
public interface CalibrationStore extends OriginalStore {

    /**
     * Keeps a calibration: first its tone, then everything else in one step. After a failure in between there is
     * no half calibration, and a tone that was already placed stays.
     *
     * @param calibration the calibration
     * @return the number it got
     */
    CalibrationId add(NewCalibration calibration);

    /**
     * Finds a calibration.
     *
     * @param id its number
     * @return the calibration, or empty if there is none of this number
     */
    Optional<KeptCalibration> find(CalibrationId id);

    /**
     * Every calibration.
     *
     * @return oldest tone first
     */
    List<KeptCalibration> all();
}
