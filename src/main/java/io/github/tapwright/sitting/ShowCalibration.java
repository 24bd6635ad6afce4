package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;

/** Shows one calibration of an archive. */
public final class ShowCalibration {

    private final CalibrationStore calibrations;

    /**
     * Joins the use case with what it needs.
     *
     * @param calibrations where calibrations are kept
     */
    public ShowCalibration(CalibrationStore calibrations) {
        this.calibrations = calibrations;
    }

    /**
     * One calibration.
     *
     * @param id its number
     * @return the calibration
     * @throws RefusedEntryException if there is none of this number
     */
    public KeptCalibration show(CalibrationId id) {
        return calibrations
                .find(id)
                .orElseThrow(() -> new RefusedEntryException(
                        "there is no calibration " + id + "; look its number up with: calibration list"));
    }

    /**
     * One calibration, for something new.
     *
     * @param id its number
     * @return the calibration
     * @throws RefusedEntryException if there is none of this number, or it is withdrawn
     */
    public KeptCalibration use(CalibrationId id) {
        KeptCalibration kept = show(id);
        kept.withdrawn().ifPresent(why -> {
            throw new RefusedEntryException("calibration " + id + " is withdrawn (" + why.reason()
                    + "); choose another, or take it back with calibration withdraw " + id + " --take-back");
        });
        return kept;
    }

    /**
     * Refuses to begin something new that would rest on a calibration withdrawn.
     *
     * @param procedure what is to be done
     * @throws RefusedEntryException if its calibration does not exist, or is withdrawn
     */
    public void refuseWithdrawn(Procedure procedure) {
        if (procedure instanceof Procedure.OpenPlucks plucks) {
            plucks.calibration().ifPresent(this::use);
        }
    }
}
