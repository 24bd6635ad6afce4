package io.github.tapwright.statistics;

import java.util.List;

/**
 * One value of a study in which several values belong together.
 *
 * @param group what it belongs to, such as an instrument's shop number
 * @param value what was measured, finite
 * @param predictors what it may depend on, such as 0 or 1 for a construction, or the humidity; finite, maybe none
 */
public record Observation(String group, double value, List<Double> predictors) {

    /** Keeps a copy and refuses what is no number. */
    public Observation {
        predictors = List.copyOf(predictors);
        // No stream: studies of ten thousand sittings make half a million of these.
        boolean finite = Double.isFinite(value);
        for (Double predictor : predictors) {
            finite &= Double.isFinite(predictor);
        }
        if (!finite) {
            throw new IllegalArgumentException(
                    "an observation needs finite numbers, got " + value + " with " + predictors);
        }
    }
}
