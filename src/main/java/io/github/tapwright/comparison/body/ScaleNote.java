package io.github.tapwright.comparison.body;

import io.github.tapwright.mode.body.Answer.Inferred;
import io.github.tapwright.note.NoteName;
import io.github.tapwright.statistics.Interval;

/**
 * Where a resonance falls against the notes of the scale.
 *
 * <p>A resonance on a played note takes its energy fast and may beat with it: a wolf's place, here within 25 cents of a
 * note (common practice, no source). Notes are equally tempered from A4 = 440 Hz [ISO16].
 *
 * @param note the nearest
 * @param cents how far the resonance lies above it
 * @param cents95 the same at the ends of its 95 % interval
 * @param place what that means
 */
public record ScaleNote(NoteName note, double cents, Interval cents95, Place place) {

    private static final double A4_HZ = 440;
    private static final double WOLF_CENTS = 25;
    private static final double SEMITONE = 100;
    private static final int E2 = -29;
    private static final int B5 = 14;

    /** What lying near a note or between notes means. */
    public enum Place {
        /** All of the interval within 25 cents of the note. */
        WOLF("a wolf's place"),
        /** All of it between the notes. */
        BETWEEN("between the notes"),
        /** Some of it here, some there. */
        CANNOT_TELL("cannot tell"),
        /** No note that is played lies near. */
        OUTSIDE("outside the played notes");

        private final String words;

        Place(String words) {
            this.words = words;
        }

        /**
         * The place as people read it.
         *
         * @return words
         */
        public String words() {
            return words;
        }
    }

    /**
     * Places a resonance.
     *
     * @param hz with its interval, above 0
     * @return its note
     */
    public static ScaleNote of(Inferred hz) {
        NoteName note = NoteName.nearest(hz.value(), A4_HZ);
        Interval cents = new Interval(
                note.centsTo(hz.interval95().lower(), A4_HZ),
                note.centsTo(hz.interval95().upper(), A4_HZ));
        return new ScaleNote(note, note.centsTo(hz.value(), A4_HZ), cents, place(note, cents));
    }

    private static Place place(NoteName note, Interval cents) {
        if (note.semitonesFromA4() < E2 || note.semitonesFromA4() > B5) {
            return Place.OUTSIDE;
        }
        if (cents.lower() >= -WOLF_CENTS && cents.upper() <= WOLF_CENTS) {
            return Place.WOLF;
        }
        boolean above = cents.lower() > WOLF_CENTS && cents.upper() < SEMITONE - WOLF_CENTS;
        boolean below = cents.upper() < -WOLF_CENTS && cents.lower() > WOLF_CENTS - SEMITONE;
        return above || below ? Place.BETWEEN : Place.CANNOT_TELL;
    }
}
