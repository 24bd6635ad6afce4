package io.github.tapwright.instrument;

import java.util.Optional;

/**
 * Measures of the finished instrument.
 *
 * @param scaleLengthMm nut to saddle, 300 to 900 mm; empty if unknown
 * @param stringCount 4 to 18; empty if unknown
 * @param soundholeDiameterMm 20 to 150 mm, of a circle of equal area if the hole is not round; empty if unknown
 * @param notes anything else about the body; empty if there is nothing
 */
public record Body(
        Optional<Double> scaleLengthMm,
        Optional<Integer> stringCount,
        Optional<Double> soundholeDiameterMm,
        Optional<String> notes) {

    /** Nobody wrote anything down. */
    public static final Body UNKNOWN = new Body(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Refuses measures no guitar has; the limits are wide, common practice, no source. */
    public Body {
        scaleLengthMm = Entry.figure("the scale length in mm", scaleLengthMm, 300, 900);
        Entry.figure("the number of strings", stringCount.map(Integer::doubleValue), 4, 18);
        soundholeDiameterMm = Entry.figure("the soundhole's diameter in mm", soundholeDiameterMm, 20, 150);
        notes = Entry.note("the body notes", notes);
    }
}
