package io.github.tapwright.sitting;

import io.github.tapwright.level.FullScale;
import io.github.tapwright.note.run.Tuning;
import java.util.List;
import java.util.Optional;

/**
 * Repeated plucks of the open strings of one instrument in one set-up.
 *
 * <p>Once its calibration is withdrawn its levels are no sound pressure levels any more: all of them are wrong by one unknown
 * figure, so that they may be held against each other and nothing else. Loudness in sone, which does not follow levels evenly,
 * means nothing then.
 *
 * @param plucks in the order played
 * @param tuning what the open strings sound
 * @param calibration what the levels rest on: dB SPL by this calibration, else dB re full scale
 * @param methodVersion version of the method that made these numbers
 * @param withdrawn why the calibration was withdrawn since; empty if it is in use, or there is none
 */
public record PluckRun(
        List<Pluck> plucks,
        Tuning tuning,
        Optional<CalibrationId> calibration,
        String methodVersion,
        Optional<OutOfUse> withdrawn) {

    /** Keeps a copy of the list. */
    public PluckRun {
        plucks = List.copyOf(plucks);
    }

    /**
     * Plucks as they were measured, by a calibration that is in use or by none.
     *
     * @param plucks in the order played
     * @param tuning what the open strings sound
     * @param calibration what the levels rest on
     * @param methodVersion version of the method that made these numbers
     */
    public PluckRun(List<Pluck> plucks, Tuning tuning, Optional<CalibrationId> calibration, String methodVersion) {
        this(plucks, tuning, calibration, methodVersion, Optional.empty());
    }

    /**
     * The plucks with the figures that mean something.
     *
     * @return as they were measured, but without loudness in sone where the calibration was withdrawn
     */
    public List<Pluck> meaningful() {
        return withdrawn.isEmpty()
                ? plucks
                : plucks.stream().map(Pluck::withoutSone).toList();
    }

    /**
     * What the levels are measured against, in words.
     *
     * @return the unit, by which calibration, and whether that was withdrawn
     */
    public String levelUnit() {
        return calibration
                .map(id -> withdrawn
                        .map(why -> "dB by calibration " + id + ", which is withdrawn (" + why.reason() + ")")
                        .orElse("dB re 20 µPa by calibration " + id))
                .orElseGet(() -> new FullScale().unit());
    }
}
