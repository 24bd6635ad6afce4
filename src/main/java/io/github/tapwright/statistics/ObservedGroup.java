package io.github.tapwright.statistics;

import java.util.Arrays;
import java.util.List;

/**
 * The values of a study that belong together, such as an instrument's sittings, as columns of numbers: what a study of thousands of values
 * is put together from without an {@link Observation} for each.
 */
public final class ObservedGroup {

    private final double[] values;
    private final double[][] predictors;

    private ObservedGroup(double[] values, double[][] predictors) {
        this.values = values;
        this.predictors = predictors;
    }

    /**
     * A group.
     *
     * @param values what was measured, at least one, finite; not to be changed afterwards, as no copy is kept
     * @param predictors one column for each, as long as the values, finite; not to be changed either
     * @return the group
     */
    public static ObservedGroup of(double[] values, double[]... predictors) {
        if (values.length == 0 || Arrays.stream(predictors).anyMatch(p -> p.length != values.length)) {
            throw new IllegalArgumentException(
                    "a group needs values, and one number of each predictor with every value; got " + values.length);
        }
        Finite.check(values);
        Finite.check(predictors);
        return new ObservedGroup(values, predictors);
    }

    static ObservedGroup of(List<Observation> together) {
        int count = together.get(0).predictors().size();
        if (together.stream().anyMatch(o -> o.predictors().size() != count)) {
            throw new IllegalArgumentException(MixedData.UNLIKE);
        }
        double[][] predictors = new double[count][];
        for (int j = 0; j < count; j++) {
            int column = j;
            predictors[j] = together.stream()
                    .mapToDouble(o -> o.predictors().get(column))
                    .toArray();
        }
        return of(together.stream().mapToDouble(Observation::value).toArray(), predictors);
    }

    /** How many values there are. */
    int size() {
        return values.length;
    }

    /** Not to be changed. */
    double[] values() {
        return values;
    }

    /** How many predictors there are. */
    int predictors() {
        return predictors.length;
    }

    /** The column of one; not to be changed. */
    double[] predictor(int j) {
        return predictors[j];
    }

    /**
     * Whether a column is one number all along.
     *
     * @param column any length
     * @return true if no number differs from the first
     */
    public static boolean isConstant(double[] column) {
        for (double number : column) {
            if (number != column[0]) {
                return false;
            }
        }
        return true;
    }
}
