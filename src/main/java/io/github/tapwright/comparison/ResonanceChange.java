package io.github.tapwright.comparison;

import io.github.tapwright.mode.Resonance;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
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
 * @param levelDb change of level against the resonance that serves as 0 dB in both sittings, dB; empty for that resonance
 */
public record ResonanceChange(
        Optional<String> name,
        Resonance first,
        Resonance second,
        Difference frequencyHz,
        Difference q,
        Difference decayTimeSeconds,
        Optional<Difference> levelDb) {

    static ResonanceChange between(
            Optional<String> name,
            Resonance a,
            Resonance b,
            Optional<Difference> level,
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
                        ofFrequency.map(k -> k.ofDecay(
                                b.decayTimeSeconds().value(), b.frequencyHz().value())),
                        spread,
                        comparability),
                level);
    }

    /**
     * What it is called.
     *
     * @return its name, or such as "the resonance at 368 Hz", by its frequency before
     */
    public String called() {
        return name.orElse(
                "the resonance at " + Figures.text(first.frequencyHz().value(), 0) + " Hz");
    }

    /**
     * The quantities that are questions of their own: Q and decay time are one thing seen twice, and count once.
     *
     * @return frequency, Q and level, as far as they are shown
     */
    List<Difference> questions() {
        return Stream.concat(Stream.of(frequencyHz, q), levelDb.stream())
                .filter(Difference::shown)
                .toList();
    }

    /** The same with its probabilities made larger; decay time is no surer than the Q it comes from. */
    ResonanceChange adjusted(UnaryOperator<Difference> asked) {
        Difference ofQ = asked.apply(q);
        return new ResonanceChange(
                name,
                first,
                second,
                asked.apply(frequencyHz),
                ofQ,
                decayTimeSeconds.adjusted(Math.max(decayTimeSeconds.probability(), ofQ.adjustedProbability())),
                levelDb.map(asked));
    }

    /**
     * Every quantity.
     *
     * @return frequency, Q, decay time, and level unless it is 0 dB by definition
     */
    public List<Difference> differences() {
        return Stream.concat(Stream.of(frequencyHz, q, decayTimeSeconds), levelDb.stream())
                .toList();
    }
}
