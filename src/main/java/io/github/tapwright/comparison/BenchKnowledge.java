package io.github.tapwright.comparison;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.statistics.Estimate;

/**
 * What is known about a workshop besides the sittings themselves.
 *
 * @param spread how far setting up again moves figures of taps
 * @param plucks how far plucking again moves the level of a sitting of plucks, beside what its plucks leave unsure, dB
 * @param window the humidity the workshop keeps
 * @param sensitivities how far humidity moves each resonance of the instrument in question
 */
public record BenchKnowledge(
        SetUpSpread spread, KnownScatter plucks, ShopWindow window, HumiditySensitivities sensitivities) {

    /**
     * What is known where no pluck is in question.
     *
     * @param spread how far setting up again moves figures of taps
     * @param window the humidity the workshop keeps
     * @param sensitivities how far humidity moves each resonance of the instrument in question
     */
    public BenchKnowledge(SetUpSpread spread, ShopWindow window, HumiditySensitivities sensitivities) {
        this(spread, SetUpSpread.USUAL.level(), window, sensitivities);
    }

    /**
     * What one sitting more does to a subject.
     *
     * @param subject plucks, or a quantity of a resonance
     * @return the spread its figures have; levels of plucks have that of plucking again
     */
    public SetUpSpread spread(Subject subject) {
        return subject.equals(Subject.PLUCKS) ? spread.withLevel(plucks) : spread;
    }

    /**
     * What one sitting more does to a figure: zero with that spread about it.
     *
     * @param subject what the figure is of
     * @param value the figure
     * @return an estimate of value 0 in the figure's unit
     */
    public Estimate again(Subject subject, double value) {
        return spread(subject).of(subject.quantity(), value);
    }
}
