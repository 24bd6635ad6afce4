package io.github.tapwright.desktop.settings;

import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A calibration, and the sittings whose levels rest on it.
 *
 * @param kept the calibration
 * @param resting their numbers, in the order they were added
 */
record CalibrationRow(KeptCalibration kept, List<SittingId> resting) {

    /** Keeps a copy of the list. */
    CalibrationRow {
        resting = List.copyOf(resting);
    }

    boolean isWithdrawn() {
        return kept.withdrawn().isPresent();
    }

    /** Whether it is in use, and if not, why. */
    String state() {
        return kept.withdrawn()
                .map(OutOfUse::reason)
                .map(why -> "withdrawn: " + why)
                .orElse("in use");
    }

    /** What it holds for, and that at its gain. */
    String input() {
        return kept.input().microphone().orElse("unknown microphone")
                + kept.input().gain().map(gain -> ", gain " + gain).orElse(", unknown gain");
    }

    /** What rests on it, and what that means. */
    String consequence() {
        String whole = "Calibration " + kept.id() + " (" + input() + ") is " + state() + ". ";
        if (resting.isEmpty()) {
            return whole + "No sitting's levels rest on it.";
        }
        return whole + "The levels of " + names() + " rest on it"
                + (isWithdrawn()
                        ? ", and are no sound pressure levels until they are analysed anew, without it or by another."
                        : ".");
    }

    private String names() {
        return (resting.size() == 1 ? "sitting " : "sittings ")
                + resting.stream().map(SittingId::toString).collect(Collectors.joining(", "));
    }
}
