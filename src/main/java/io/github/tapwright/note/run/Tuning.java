package io.github.tapwright.note.run;

import io.github.tapwright.note.NoteName;
import io.github.tapwright.note.NoteSettings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What the open strings sound and how many frets there are.
 *
 * <p>Fret k of an open pitch f0 sounds f0·2^(k/12), equally tempered.
 *
 * @param openHz open strings, string 1 (the highest) first; 1 to 12 of them
 * @param fretCount highest fret, 0 to 36
 */
public record Tuning(List<Double> openHz, int fretCount) {

    /** E4 B3 G3 D3 A2 E2 with A4 at 440 Hz, 19 frets: the usual classical guitar. Common practice, no source. */
    public static final Tuning CLASSICAL =
            new Tuning(List.of(329.6276, 246.9417, 195.9977, 146.8324, 110.0, 82.4069), 19);

    /** The open strings of {@link #CLASSICAL} by name, from the lowest up. */
    public static final String CLASSICAL_NOTES = "E2,A2,D3,G3,B3,E4";

    /** Refuses tunings no guitar has. */
    public Tuning {
        openHz = List.copyOf(openHz);
        if (openHz.isEmpty()
                || openHz.size() > 12
                || openHz.stream()
                        .anyMatch(f -> !(f >= NoteSettings.STANDARD.lowestPitchHz()
                                && f <= NoteSettings.STANDARD.highestPitchHz()))) {
            throw new IllegalArgumentException(
                    "a tuning needs 1 to 12 open strings between 38 and 1600 Hz, where notes are heard, was " + openHz);
        }
        if (fretCount < 0 || fretCount > 36) {
            throw new IllegalArgumentException("a fingerboard has 0 to 36 frets, not " + fretCount);
        }
    }

    /**
     * Reads a tuning as makers write it.
     *
     * @param notes open strings from the lowest up, with commas or spaces between, such as {@link #CLASSICAL_NOTES}
     * @param a4Hz tuning note the names count from
     * @param fretCount highest fret, 0 to 36
     * @return the tuning
     * @throws IllegalArgumentException if a word is no note, or no guitar is tuned so; says what to write
     */
    public static Tuning named(String notes, double a4Hz, int fretCount) {
        List<Double> openHz = new ArrayList<>();
        for (String name : notes.strip().split("\\s*,\\s*|\\s+", -1)) {
            openHz.add(NoteName.read(name)
                    .orElseThrow(() -> new IllegalArgumentException("'" + name
                            + "' is no note; give the open strings from the lowest up, such as " + CLASSICAL_NOTES))
                    .hz(a4Hz));
        }
        Collections.reverse(openHz);
        return new Tuning(openHz, fretCount);
    }

    /**
     * What a place sounds.
     *
     * @param place on this fingerboard
     * @return Hz
     */
    public double hz(Fret place) {
        return openHz.get(place.string() - 1) * Math.pow(2, place.fret() / 12.0);
    }

    /**
     * How far a pitch lies above what a place should sound.
     *
     * @param pitchHz greater than 0
     * @param place on this fingerboard
     * @return cents, negative if flat
     */
    public double centsAbove(double pitchHz, Fret place) {
        return 1200 * Math.log(pitchHz / hz(place)) / Math.log(2);
    }

    /**
     * The places that sound a pitch, give or take some cents.
     *
     * @param pitchHz greater than 0
     * @param withinCents how far off a place may be
     * @return from the highest string to the lowest
     */
    public List<Fret> placesOf(double pitchHz, double withinCents) {
        List<Fret> places = new ArrayList<>();
        for (int string = 1; string <= openHz.size(); string++) {
            double semitones = 12 * Math.log(pitchHz / openHz.get(string - 1)) / Math.log(2);
            int fret = (int) Math.round(semitones);
            if (fret >= 0 && fret <= fretCount && 100 * Math.abs(semitones - fret) <= withinCents) {
                places.add(new Fret(string, fret));
            }
        }
        return places;
    }
}
