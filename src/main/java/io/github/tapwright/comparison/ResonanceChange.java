package io.github.tapwright.comparison;

import io.github.tapwright.mode.Resonance;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * One resonance in two sittings.
 *
 * @param name the name that holds in either sitting; empty if it has none
 * @param first its figures before
 * @param second its figures after
 * @param frequencyHz change of frequency, Hz
 * @param q change of Q
 * @param decayTimeSeconds change of decay time, s
 * @param levelDb change of level relative to the highest resonance of its own sitting, dB
 */
public record ResonanceChange(
        Optional<String> name,
        Resonance first,
        Resonance second,
        Difference frequencyHz,
        Difference q,
        Difference decayTimeSeconds,
        Difference levelDb) {

    static ResonanceChange between(
            Optional<String> name,
            Resonance a,
            Resonance b,
            Optional<Correction> ofFrequency,
            SetUpSpread spread,
            Comparability comparability) {
        return new ResonanceChange(
                name,
                a,
                b,
                Difference.between(
                        Quantity.FREQUENCY, a.frequencyHz(), b.frequencyHz(), ofFrequency, spread, comparability),
                Difference.between(Quantity.Q, a.q(), b.q(), Optional.empty(), spread, comparability),
                Difference.between(
                        Quantity.DECAY_TIME,
                        a.decayTimeSeconds(),
                        b.decayTimeSeconds(),
                        Optional.empty(),
                        spread,
                        comparability),
                Difference.between(Quantity.LEVEL, a.levelDb(), b.levelDb(), Optional.empty(), spread, comparability));
    }

    /**
     * The quantities that are questions of their own: Q and decay time are one thing seen twice, and count once.
     *
     * @return frequency, Q and level, as far as they are shown
     */
    List<Difference> questions() {
        return (isReference() ? Stream.of(frequencyHz, q) : Stream.of(frequencyHz, q, levelDb))
                .filter(Difference::shown)
                .toList();
    }

    /** The same with its probabilities made larger; decay time is no surer than the Q it comes from. */
    ResonanceChange adjusted(ToDoubleFunction<Difference> probability) {
        Difference ofQ = adjusted(q, probability);
        return new ResonanceChange(
                name,
                first,
                second,
                adjusted(frequencyHz, probability),
                ofQ,
                decayTimeSeconds.adjusted(Math.max(decayTimeSeconds.probability(), ofQ.adjustedProbability())),
                isReference() ? levelDb : adjusted(levelDb, probability));
    }

    /**
     * Whether it is the strongest resonance of both sittings, to which all levels refer: its level is 0 dB by definition, and no question.
     *
     * @return true if there is no level to compare
     */
    public boolean isReference() {
        return first.isReference() && second.isReference();
    }

    private static Difference adjusted(Difference d, ToDoubleFunction<Difference> probability) {
        return d.shown() ? d.adjusted(probability.applyAsDouble(d)) : d;
    }

    /**
     * Every quantity that can be compared.
     *
     * @return frequency, Q, decay time, and level unless it is 0 dB by definition
     */
    public List<Difference> differences() {
        return isReference()
                ? List.of(frequencyHz, q, decayTimeSeconds)
                : List.of(frequencyHz, q, decayTimeSeconds, levelDb);
    }
}
