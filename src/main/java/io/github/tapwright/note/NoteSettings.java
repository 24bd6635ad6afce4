package io.github.tapwright.note;

import java.util.Optional;

/**
 * What a note analysis looks for; kept with every result.
 *
 * @param a4Hz tuning note, 380 to 480 Hz; 440 Hz by [ISO16]
 * @param lowestPitchHz lowest pitch to consider, at least 25 Hz
 * @param highestPitchHz highest pitch to consider, at most 2,500 Hz and above the lowest
 * @param highestPartialHz partials are looked for up to here or to 0.45 of the sample rate, at most 12,000 Hz
 * @param expected the note the player meant, if known: pitches more than seven semitones off it are not considered
 */
public record NoteSettings(
        double a4Hz,
        double lowestPitchHz,
        double highestPitchHz,
        double highestPartialHz,
        Optional<NoteName> expected) {

    /** Any note of any guitar, from baritone to the highest fret, partials up to 8 kHz. */
    public static final NoteSettings STANDARD = new NoteSettings(440, 38, 1600, 8000, Optional.empty());

    /** Refuses settings no analysis can honour. */
    public NoteSettings {
        if (!(a4Hz >= 380) || !(a4Hz <= 480)) {
            throw new IllegalArgumentException("the tuning note A4 must lie between 380 and 480 Hz, was " + a4Hz);
        }
        if (!(lowestPitchHz >= 25) || !(highestPitchHz > lowestPitchHz) || !(highestPitchHz <= 2500)) {
            throw new IllegalArgumentException(
                    "pitches must lie between 25 and 2500 Hz, were " + lowestPitchHz + " to " + highestPitchHz + " Hz");
        }
        if (!(highestPartialHz > highestPitchHz) || !(highestPartialHz <= 12_000)) {
            throw new IllegalArgumentException(
                    "the highest partial must lie above every pitch and at most at 12000 Hz, was " + highestPartialHz);
        }
    }

    /**
     * These settings with another tuning note.
     *
     * @param hz frequency of A4
     * @return changed settings
     */
    public NoteSettings withA4(double hz) {
        return new NoteSettings(hz, lowestPitchHz, highestPitchHz, highestPartialHz, expected);
    }

    /**
     * These settings for a note that is known beforehand.
     *
     * @param note what the player meant
     * @return changed settings
     */
    public NoteSettings expecting(NoteName note) {
        return new NoteSettings(a4Hz, lowestPitchHz, highestPitchHz, highestPartialHz, Optional.of(note));
    }

    /** Whether a pitch is to be considered at all. */
    boolean allows(double hz) {
        return hz >= lowestPitchHz
                && hz <= highestPitchHz
                && expected.map(note -> Math.abs(note.centsTo(hz, a4Hz)) <= 700).orElse(true);
    }
}
