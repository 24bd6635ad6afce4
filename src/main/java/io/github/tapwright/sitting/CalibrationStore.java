package io.github.tapwright.sitting;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps calibrations with their recorded tones, bit for bit; none is ever deleted. */
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

    /**
     * Withdraws a calibration; all that was said before is kept.
     *
     * @param id an existing calibration
     * @param why the maker's reason
     */
    void withdraw(CalibrationId id, OutOfUse why);

    /**
     * Takes a calibration back into use.
     *
     * @param id an existing calibration
     * @param at when the maker said so
     */
    void takeBack(CalibrationId id, Instant at);

    /**
     * The sittings whose levels rest on a calibration.
     *
     * @param id its number
     * @return those whose latest analysis used it, in the order they were added
     */
    List<SittingId> restingOn(CalibrationId id);
}
