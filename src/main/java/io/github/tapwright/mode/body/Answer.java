package io.github.tapwright.mode.body;

import io.github.tapwright.statistics.Interval;
import java.util.Optional;

/** What is known about one quantity of a body, or why it is not. */
public sealed interface Answer {

    /**
     * The figure.
     *
     * @return empty if it is not known
     */
    default Optional<Inferred> inferred() {
        return this instanceof Inferred found ? Optional.of(found) : Optional.empty();
    }

    /**
     * A figure with its uncertainty, by drawing from its inputs. Source: [GUM-S1], 7.
     *
     * @param value from the best estimates of the inputs
     * @param standardUncertainty standard deviation of the draws
     * @param interval95 from the 2.5 % to the 97.5 % quantile of the draws
     */
    record Inferred(double value, double standardUncertainty, Interval interval95) implements Answer {

        /**
         * The same in another unit.
         *
         * @param factor greater than 0
         * @return scaled
         */
        public Inferred times(double factor) {
            return new Inferred(
                    value * factor,
                    standardUncertainty * factor,
                    new Interval(interval95.lower() * factor, interval95.upper() * factor));
        }
    }

    /**
     * Something is needed first.
     *
     * @param need what to do for it, a whole clause such as "one more sitting with the hole covered gives it"
     */
    record Missing(String need) implements Answer {}

    /**
     * The readings contradict the model, or might within their uncertainty.
     *
     * @param why with its remedy
     */
    record Contradicted(String why) implements Answer {}
}
