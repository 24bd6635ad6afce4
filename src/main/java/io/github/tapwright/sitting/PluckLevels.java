package io.github.tapwright.sitting;

import java.util.List;

/**
 * The levels of a sitting's plucks whose string is known.
 *
 * @param levels in the order played
 * @param calibrated whether they are levels re 20 µPa, not re full scale
 */
public record PluckLevels(List<OfString> levels, boolean calibrated) {

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
                run.calibration().isPresent());
    }
}
