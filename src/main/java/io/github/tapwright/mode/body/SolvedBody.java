package io.github.tapwright.mode.body;

import java.util.List;
import java.util.Optional;

/**
 * One set of plain figures and what follows from them: the best estimates, or one draw.
 *
 * @param openHz as in {@link BodyReadings}
 * @param coveredHz as there
 * @param load as there
 * @param volume V, m³
 * @param hole radius, thickness and end correction
 * @param air in the box
 */
record SolvedBody(
        List<Double> openHz,
        Optional<List<Double>> coveredHz,
        Optional<PlainLoad> load,
        Optional<Double> volume,
        Optional<HelmholtzFrequency> hole,
        Air air) {

    record PlainLoad(double kilograms, boolean covered, List<Double> hz) {}

    /** Empty if the hole was not covered, or if the figures contradict the model. */
    Optional<BodyFrequencies> frequencies() {
        return coveredHz
                .filter(c -> Inversion.contradiction(openHz, c).isEmpty())
                .map(c -> Inversion.solve(openHz, c));
    }

    /** The figure of a quantity, empty where something is missing or contradictory. */
    Optional<Double> figure(BodyQuantity quantity) {
        return switch (quantity) {
            case HELMHOLTZ -> frequencies().map(BodyFrequencies::helmholtzHz);
            case TOP_ALONE -> frequencies().map(f -> f.top().aloneHz());
            case TOP_ON_AIR -> frequencies().map(f -> f.top().airSpringHz());
            case BACK_ALONE -> frequencies().flatMap(BodyFrequencies::back).map(PlateFrequencies::aloneHz);
            case BACK_ON_AIR -> frequencies().flatMap(BodyFrequencies::back).map(PlateFrequencies::airSpringHz);
            case TOP_MASS -> topMass();
            case TOP_MASS_BY_SUM -> topMassBySum();
            case TOP_STIFFNESS -> stiffness();
            case TOP_AREA -> area();
            case RADIATED_SENSITIVITY -> radiatedSensitivity();
            case PLATEAU -> plateau();
            case HELMHOLTZ_COMPUTED -> computedHelmholtz();
        };
    }

    Optional<Double> topMass() {
        return load.flatMap(l -> bare(l).map(b -> AddedMassForms.byProduct(l.kilograms, b, l.hz)))
                .filter(SolvedBody::isMass);
    }

    Optional<Double> topMassBySum() {
        return load.filter(l -> !l.covered)
                .flatMap(l -> frequencies().map(f -> AddedMassForms.bySum(l.kilograms, openHz, l.hz, f)))
                .filter(SolvedBody::isMass);
    }

    Optional<Double> naiveMass() {
        return load.filter(l -> !l.covered)
                .map(l -> AddedMassForms.naive(l.kilograms, openHz.get(1), l.hz.get(1)))
                .filter(SolvedBody::isMass);
    }

    Optional<Double> stiffness() {
        return topMass()
                .flatMap(m ->
                        frequencies().map(f -> m * square(2 * Math.PI * f.top().aloneHz())));
    }

    /** A = 2π·f_a·sqrt(m/μ). */
    Optional<Double> area() {
        return topMass()
                .flatMap(m -> frequencies()
                        .flatMap(f -> volume.map(v -> 2
                                * Math.PI
                                * f.top().airSpringHz()
                                * Math.sqrt(m / air.stiffnessPascalsPerCubicMetre(v)))));
    }

    Optional<Double> radiatedSensitivity() {
        return area().flatMap(a -> topMass().map(m -> a / m));
    }

    Optional<Double> plateau() {
        return radiatedSensitivity().map(s -> air.densityKilogramsPerCubicMetre() * s / (4 * Math.PI));
    }

    Optional<Double> computedHelmholtz() {
        return hole.flatMap(h -> volume.map(v -> h.hz(air, v)));
    }

    private Optional<List<Double>> bare(PlainLoad load) {
        return load.covered ? coveredHz : Optional.of(openHz);
    }

    /** A loaded body that did not become lower gives no mass, or one without end. */
    private static boolean isMass(double kilograms) {
        return kilograms > 0 && Double.isFinite(kilograms);
    }

    private static double square(double x) {
        return x * x;
    }
}
