package io.github.tapwright.note;

/**
 * How long the whole note rings, all partials together.
 *
 * @param early early decay time
 * @param t20 from 5 to 25 dB
 * @param t30 from 5 to 35 dB
 * @param heardDb how many decibels of decay the recording carries; 0 if none
 */
public record WholeDecay(Finding<DecayTime> early, Finding<DecayTime> t20, Finding<DecayTime> t30, double heardDb) {

    /**
     * The decay time to quote: T30 if the recording carries it, else T20.
     *
     * @return the time with its range, or why there is none
     */
    public Finding<DecayTime> decayTime() {
        return t30.found().isPresent() ? t30 : t20;
    }

    static WholeDecay refused(String reason) {
        return new WholeDecay(
                new Finding.NotFound<>(reason), new Finding.NotFound<>(reason), new Finding.NotFound<>(reason), 0);
    }
}
