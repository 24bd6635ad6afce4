package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import java.time.Clock;
import java.util.List;

/**
 * Withdraws a calibration that was wrong, and takes it back.
 *
 * <p>A calibration withdrawn is kept with its tone and listed with the reason. Nothing new uses it. Levels of sittings that
 * rest on it stay as they were measured, but are no longer called sound pressure levels and are compared with nothing, until
 * they are measured anew.
 */
public final class WithdrawCalibration {

    private final CalibrationStore calibrations;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param calibrations where calibrations are kept
     * @param clock what tells the time
     */
    public WithdrawCalibration(CalibrationStore calibrations, Clock clock) {
        this.calibrations = calibrations;
        this.clock = clock;
    }

    /**
     * Withdraws a calibration; of several reasons the one given last holds.
     *
     * @param id which calibration
     * @param reason why, on one line
     * @return the calibration as it is kept now
     * @throws RefusedEntryException if there is no such calibration or no reason
     */
    public KeptCalibration withdraw(CalibrationId id, String reason) {
        ShowCalibration show = new ShowCalibration(calibrations);
        calibrations.withdraw(show.show(id).id(), new OutOfUse(reason, clock.instant()));
        return show.show(id);
    }

    /**
     * Takes a calibration back into use.
     *
     * @param id which calibration
     * @return the calibration as it is kept now
     * @throws RefusedEntryException if there is no such calibration, or it is not withdrawn
     */
    public KeptCalibration takeBack(CalibrationId id) {
        ShowCalibration show = new ShowCalibration(calibrations);
        if (show.show(id).withdrawn().isEmpty()) {
            throw new RefusedEntryException(
                    "calibration " + id + " is not withdrawn, so there is nothing to take back");
        }
        calibrations.takeBack(id, clock.instant());
        return show.show(id);
    }

    /**
     * The sittings whose levels rest on a calibration.
     *
     * @param id which calibration
     * @return in the order they were added
     */
    public List<SittingId> restingOn(CalibrationId id) {
        return calibrations.restingOn(id);
    }
}
