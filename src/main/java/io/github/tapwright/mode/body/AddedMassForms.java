package io.github.tapwright.mode.body;

import java.util.List;

/**
 * From an added mass to the mass of the moving top.
 *
 * <p>The mass must sit where the top is struck, at the bridge, and not rattle. Source: derived, exact for the model.
 */
final class AddedMassForms {

    private AddedMassForms() {}

    /**
     * By products, m = Δm/[(Π f/Π f′)² − 1], hole open or covered: every spring stays, so that the product of all
     * resonances falls with the mass alone. It holds with losses too.
     *
     * @return not above zero where the mass did not lower the product
     */
    static double byProduct(double addedKilograms, List<Double> bareHz, List<Double> loadedHz) {
        double ratio = product(bareHz) / product(loadedHz);
        return addedKilograms / (ratio * ratio - 1);
    }

    /**
     * By sums, hole open: Σ f² less the shares of air plug and back, f_h² + f_b0² + f_ab², belongs to the top and
     * falls with its mass.
     */
    static double bySum(double addedKilograms, List<Double> bareHz, List<Double> loadedHz, BodyFrequencies body) {
        double rest = square(body.helmholtzHz())
                + body.back()
                        .map(b -> square(b.aloneHz()) + square(b.airSpringHz()))
                        .orElse(0.0);
        return addedKilograms / ((sum(bareHz) - rest) / (sum(loadedHz) - rest) - 1);
    }

    /** What the main top alone would say, m = Δm/[(f+/f+′)² − 1]: a trap, since the air carries part of it. */
    static double naive(double addedKilograms, double bareHz, double loadedHz) {
        return byProduct(addedKilograms, List.of(bareHz), List.of(loadedHz));
    }

    private static double product(List<Double> hz) {
        return hz.stream().reduce(1.0, (a, b) -> a * b);
    }

    private static double sum(List<Double> hz) {
        return hz.stream().mapToDouble(AddedMassForms::square).sum();
    }

    private static double square(double x) {
        return x * x;
    }
}
