package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;

/**
 * The pitch of a note.
 *
 * @param hz frequency of the first partial in the string's stretched series
 * @param nearest nearest note of the equally tempered scale
 * @param cents how far the pitch lies above that note
 */
public record Pitch(Estimate hz, NoteName nearest, Estimate cents) {

    /**
     * A pitch with its place among the notes.
     *
     * @param hz frequency of the first partial
     * @param a4Hz tuning note
     * @return the pitch
     */
    public static Pitch of(Estimate hz, double a4Hz) {
        NoteName nearest = NoteName.nearest(hz.value(), a4Hz);
        double perHz = Cents.PER_NEPER / hz.value();
        return new Pitch(
                hz,
                nearest,
                new Estimate(
                        nearest.centsTo(hz.value(), a4Hz), perHz * hz.standardUncertainty(), hz.degreesOfFreedom()));
    }
}
