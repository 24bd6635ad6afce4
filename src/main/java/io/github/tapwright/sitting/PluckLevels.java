package io.github.tapwright.sitting;

import java.util.List;
import java.util.Optional;

/**
 * The levels of a sitting's plucks whose string is known.
 *
 * @param levels in the order played
 * @param calibrated whether they were measured as levels re 20 µPa, not re full scale
 * @param withdrawn why the calibration was withdrawn since, which leaves them levels re nothing; empty if it was not
 */
public record PluckLevels(List<OfString> levels, boolean calibrated, Optional<OutOfUse> withdrawn) {

    /** Keeps a copy of the list. */
    public PluckLevels {
        levels = List.copyOf(levels);
    }

    /**
     * The level of one pluck.
     *
     * @param string which string, 1 the highest
     * @param lafMaxDb largest A-weighted level, time weighting F, dB
     */
    public record OfString(int string, double lafMaxDb) {}

    static PluckLevels of(PluckRun run) {
        return new PluckLevels(
                run.plucks().stream()
                        .filter(p -> p.string().isPresent() && p.lafMaxDb().isPresent())
                        .map(p -> new OfString(
                                p.string().orElseThrow(), p.lafMaxDb().orElseThrow()))
                        .toList(),
                run.calibration().isPresent(),
                run.withdrawn());
    }
}
