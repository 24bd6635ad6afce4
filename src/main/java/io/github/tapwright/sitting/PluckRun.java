package io.github.tapwright.sitting;

import io.github.tapwright.note.run.Tuning;
import java.util.List;
import java.util.Optional;

/**
 * Repeated plucks of the open strings of one instrument in one set-up.
 *
 * @param plucks in the order played
 * @param tuning what the open strings sound
 * @param calibration what the levels rest on: dB SPL by this calibration, else dB re full scale
 * @param methodVersion version of the method that made these numbers
 */
public record PluckRun(List<Pluck> plucks, Tuning tuning, Optional<CalibrationId> calibration, String methodVersion) {

    /** Keeps a copy of the list. */
    public PluckRun {
        plucks = List.copyOf(plucks);
    }
}
