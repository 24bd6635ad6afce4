package io.github.tapwright.statistics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** The study as matrices; predictors and values are taken relative to their means, against rounding. */
final class MixedData {

    /** What the fit needs of a group; z is its column of ones. */
    record Products(double zz, RealVector zx, double zy, RealMatrix xx, RealVector xy, double yy) {}

    final List<Products> products = new ArrayList<>();
    final List<RealMatrix> fixed = new ArrayList<>();
    private final List<RealVector> values = new ArrayList<>();
    final int observations;
    final int coefficients;
    private final double meanValue;
    private final double[] means;

    MixedData(List<Observation> study) {
        if (study.isEmpty()) {
            throw new IllegalArgumentException("a study needs observations, there are none");
        }
        observations = study.size();
        int predictors = study.get(0).predictors().size();
        coefficients = predictors + 1;
        if (study.stream().anyMatch(o -> o.predictors().size() != predictors)) {
            throw new IllegalArgumentException("every observation needs the same predictors");
        }
        meanValue = Sums.mean(study.stream().mapToDouble(Observation::value).toArray());
        means = new double[predictors];
        for (int j = 0; j < predictors; j++) {
            int column = j;
            means[j] = Sums.mean(
                    study.stream().mapToDouble(o -> o.predictors().get(column)).toArray());
        }
        Map<String, List<Observation>> groups = new LinkedHashMap<>();
        study.forEach(o ->
                groups.computeIfAbsent(o.group(), name -> new ArrayList<>()).add(o));
        groups.values().forEach(this::add);
    }

    private void add(List<Observation> group) {
        double[][] rows = new double[group.size()][coefficients];
        double[] about = new double[group.size()];
        for (int i = 0; i < rows.length; i++) {
            List<Double> predictors = group.get(i).predictors();
            rows[i][0] = 1;
            for (int j = 0; j < means.length; j++) {
                rows[i][j + 1] = predictors.get(j) - means[j];
            }
            about[i] = group.get(i).value() - meanValue;
        }
        RealMatrix x = new Array2DRowRealMatrix(rows, false);
        RealVector y = new ArrayRealVector(about, false);
        RealVector z = new ArrayRealVector(group.size(), 1);
        fixed.add(x);
        values.add(y);
        products.add(new Products(
                group.size(),
                x.preMultiply(z),
                z.dotProduct(y),
                x.transposeMultiply(x),
                x.preMultiply(y),
                y.dotProduct(y)));
    }

    boolean scattersWithinGroups() {
        return values.stream().anyMatch(y -> y.getMaxValue() > y.getMinValue());
    }

    /** Of the values about their mean. */
    double squares() {
        return products.stream().mapToDouble(Products::yy).sum();
    }

    int groups() {
        return values.size();
    }

    /** The coefficient of the maker's predictors as a combination of those fitted relative to their means. */
    RealVector contrast(int coefficient) {
        RealVector contrast = new ArrayRealVector(coefficients);
        contrast.setEntry(coefficient, 1);
        for (int j = 0; coefficient == 0 && j < means.length; j++) {
            contrast.setEntry(j + 1, -means[j]);
        }
        return contrast;
    }

    double offset(int coefficient) {
        return coefficient == 0 ? meanValue : 0;
    }
}
