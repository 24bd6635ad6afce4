package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;

/**
 * One partial of a plucked note.
 *
 * @param number n, from 1; gaps are partials too weak to be found
 * @param frequencyHz mean frequency, two sines weighted by their energies
 * @param levelDb level just after the pluck, dB re a full-scale sine
 * @param harmonicCents how far it lies above n times the pitch
 * @param seriesCents how far it lies above the string's stretched series
 * @param fitsSeries false if the series was fitted without it, because the body or another string pulls it
 * @param decay how it dies away
 */
public record Partial(
        int number,
        Estimate frequencyHz,
        Estimate levelDb,
        double harmonicCents,
        double seriesCents,
        boolean fitsSeries,
        PartialDecay decay) {

    /**
     * What the figures alone do not say: stages, beats, or why there is no decay time.
     *
     * @return a few words
     */
    public String remark() {
        String pulled = fitsSeries ? "" : "pulled off the string's series; ";
        if (decay.reservation().isPresent()) {
            return pulled + decay.reservation().get();
        }
        if (decay instanceof PartialDecay.TwoStage two) {
            return pulled
                    + (two.stagesDiffer() ? "two stages" : "two sines that die away alike")
                    + (two.beats()
                            ? ", beats at " + Figures.text(Math.abs(two.beatHz().value()), 2) + " Hz"
                            : "");
        }
        return pulled + "one stage";
    }
}
