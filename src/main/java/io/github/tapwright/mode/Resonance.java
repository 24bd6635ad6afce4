package io.github.tapwright.mode;

import io.github.tapwright.statistics.Estimate;

/**
 * One resonance found by the shared fit, with its uncertainties.
 *
 * <p>Q = ω/(2σ) and decay time T60 = ln(1000)/σ, where σ is the decay rate of the amplitude. Source:
 * [FletcherRossing1998], ch. 1; definitions as in ISO 3382-1 for the 60 dB time.
 *
 * @param frequencyHz undamped natural frequency |s|/2π
 * @param q quality factor
 * @param decayTimeSeconds time for 60 dB of decay
 * @param levelDb height of its peak in the level-normalised response, dB re the strongest resonance found in the set, listed or not
 * @param strikeCount how many strikes the fit used
 * @param note what limits this result, such as a close neighbour; empty if nothing does
 */
public record Resonance(
        Estimate frequencyHz, Estimate q, Estimate decayTimeSeconds, Estimate levelDb, int strikeCount, String note) {

    /**
     * Whether it is the strongest found, to which all levels of its set refer: 0 dB by definition.
     *
     * @return true if its level says nothing
     */
    public boolean isReference() {
        return levelDb.value() == 0;
    }
}
