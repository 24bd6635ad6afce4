package io.github.tapwright.comparison;

import io.github.tapwright.mode.Resonance;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;

/**
 * One resonance against which all sittings' levels are measured.
 *
 * <p>Each sitting's own 0 dB is its own strongest resonance, which need not be the same one or be found in all of them. Of the
 * resonances found in all, the strongest of the first sitting serves, and is 0 dB by definition: no figure, and no question.
 */
final class LevelReference {

    private LevelReference() {}

    /** Which of those found in all sittings serves, by its level in the first; empty if there are none. */
    static <T> Optional<T> strongest(Collection<T> inAll, Function<T, Resonance> inTheFirst) {
        return inAll.stream()
                .max(Comparator.comparingDouble(
                        r -> inTheFirst.apply(r).levelDb().value()));
    }

    /** The level of a resonance against the one that serves, both of one sitting; what leaves either unsure leaves their difference unsure. */
    static Estimate against(Resonance serving, Resonance found) {
        return UncertaintyBudget.independent(
                        found.levelDb().value() - serving.levelDb().value(),
                        new Component("level", found.levelDb(), 1),
                        new Component("level of what serves as 0 dB", serving.levelDb(), -1))
                .combined();
    }
}
