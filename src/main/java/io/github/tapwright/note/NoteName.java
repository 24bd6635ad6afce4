package io.github.tapwright.note;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A note of the equally tempered scale, in scientific pitch notation: A4 is the tuning note, C4 the middle C.
 *
 * <p>f = a4·2^(semitones/12), 100 cents to the semitone. Standard tuning note 440 Hz: [ISO16].
 *
 * @param semitonesFromA4 how many semitones above A4, between −69 and 58
 */
public record NoteName(int semitonesFromA4) {

    private static final List<String> LETTERS =
            List.of("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B");
    private static final Pattern WRITTEN = Pattern.compile("([A-Ga-g])([#b♯♭]?)(-?\\d)");
    private static final int A4_FROM_C0 = 57;
    private static final int LOWEST = -69;
    private static final int HIGHEST = 58;

    /** Refuses notes nobody hears. */
    public NoteName {
        if (semitonesFromA4 < LOWEST || semitonesFromA4 > HIGHEST) {
            throw new IllegalArgumentException("no such note: " + semitonesFromA4 + " semitones from A4");
        }
    }

    /**
     * The note nearest to a frequency.
     *
     * @param hz greater than 0
     * @param a4Hz tuning note
     * @return the note
     * @throws IllegalArgumentException if no note lies there; see {@link #find}
     */
    public static NoteName nearest(double hz, double a4Hz) {
        return new NoteName(semitones(hz, a4Hz));
    }

    /**
     * The note nearest to a frequency, if one lies there at all.
     *
     * @param hz greater than 0
     * @param a4Hz tuning note
     * @return empty below some 8 Hz and above some 12 kHz
     */
    public static Optional<NoteName> find(double hz, double a4Hz) {
        int semitones = semitones(hz, a4Hz);
        return semitones < LOWEST || semitones > HIGHEST ? Optional.empty() : Optional.of(new NoteName(semitones));
    }

    private static int semitones(double hz, double a4Hz) {
        return (int) Math.round(12 * Math.log(hz / a4Hz) / Math.log(2));
    }

    /**
     * Reads a name such as E2, Bb3 or F#4.
     *
     * @param text letter, sharp or flat if any, octave
     * @return the note, empty if the text names none
     */
    public static Optional<NoteName> read(String text) {
        Matcher written = WRITTEN.matcher(text.strip());
        if (!written.matches()) {
            return Optional.empty();
        }
        int semitone = LETTERS.indexOf(written.group(1).toUpperCase(Locale.ROOT));
        String sign = written.group(2);
        int shift = sign.isEmpty() ? 0 : sign.equals("#") || sign.equals("♯") ? 1 : -1;
        int fromA4 = 12 * Integer.parseInt(written.group(3)) + semitone + shift - A4_FROM_C0;
        return fromA4 < -69 || fromA4 > 58 ? Optional.empty() : Optional.of(new NoteName(fromA4));
    }

    /**
     * Frequency of this note.
     *
     * @param a4Hz tuning note
     * @return Hz
     */
    public double hz(double a4Hz) {
        return a4Hz * Math.pow(2, semitonesFromA4 / 12.0);
    }

    /**
     * How far a frequency lies above this note.
     *
     * @param hz greater than 0
     * @param a4Hz tuning note
     * @return cents, negative if flat
     */
    public double centsTo(double hz, double a4Hz) {
        return Cents.between(hz(a4Hz), hz);
    }

    @Override
    public String toString() {
        int fromC0 = semitonesFromA4 + A4_FROM_C0;
        return LETTERS.get(Math.floorMod(fromC0, 12)) + Math.floorDiv(fromC0, 12);
    }
}
