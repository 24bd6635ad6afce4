package io.github.tapwright.statistics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** The study as matrices; predictors and values are taken relative to their means, against rounding. */
final class MixedData {

    static final String UNLIKE = "every observation needs the same predictors";

    /** What the fit needs of a group; z is its column of ones. */
    record Products(double zz, RealVector zx, double zy, RealMatrix xx, RealVector xy, double yy) {}

    final List<Products> products = new ArrayList<>();
    final int observations;
    final int coefficients;
    final boolean scattersWithinGroups;
    private final double meanValue;
    private final double[] means;
    private final boolean[] constantWithinGroups;

    MixedData(List<ObservedGroup> study) {
        if (study.isEmpty()) {
            throw new IllegalArgumentException("a study needs observations, there are none");
        }
        int predictors = study.get(0).predictors();
        if (study.stream().anyMatch(g -> g.predictors() != predictors)) {
            throw new IllegalArgumentException(UNLIKE);
        }
        observations = study.stream().mapToInt(ObservedGroup::size).sum();
        coefficients = predictors + 1;
        meanValue = Sums.mean(study.stream().map(ObservedGroup::values).toList());
        means = new double[predictors];
        constantWithinGroups = new boolean[coefficients];
        constantWithinGroups[0] = true;
        for (int j = 0; j < predictors; j++) {
            int column = j;
            List<double[]> parts = study.stream().map(g -> g.predictor(column)).toList();
            means[j] = Sums.mean(parts);
            constantWithinGroups[j + 1] = parts.stream().allMatch(ObservedGroup::isConstant);
        }
        scattersWithinGroups = !study.stream().map(ObservedGroup::values).allMatch(ObservedGroup::isConstant);
        study.forEach(g -> products.add(products(g)));
    }

    private Products products(ObservedGroup group) {
        double[] x = new double[coefficients];
        double[] zx = new double[coefficients];
        double[] xy = new double[coefficients];
        double[][] xx = new double[coefficients][coefficients];
        double zy = 0;
        double yy = 0;
        for (int i = 0; i < group.size(); i++) {
            double y = group.values()[i] - meanValue;
            zy += y;
            yy += y * y;
            x[0] = 1;
            for (int j = 0; j < means.length; j++) {
                x[j + 1] = group.predictor(j)[i] - means[j];
            }
            for (int j = 0; j < coefficients; j++) {
                zx[j] += x[j];
                xy[j] += x[j] * y;
                for (int k = 0; k < coefficients; k++) {
                    xx[j][k] += x[j] * x[k];
                }
            }
        }
        return new Products(
                group.size(),
                new ArrayRealVector(zx, false),
                zy,
                new Array2DRowRealMatrix(xx, false),
                new ArrayRealVector(xy, false),
                yy);
    }

    /** Whether a coefficient's predictor, or the intercept's column of ones, is one number in each group. */
    boolean constantWithinGroups(int coefficient) {
        return constantWithinGroups[coefficient];
    }

    /** Of the values about their mean. */
    double squares() {
        return products.stream().mapToDouble(Products::yy).sum();
    }

    int groups() {
        return products.size();
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
