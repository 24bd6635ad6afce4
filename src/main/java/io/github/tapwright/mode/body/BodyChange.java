package io.github.tapwright.mode.body;

import java.util.Optional;

/**
 * A change to the body that one thinks about; zero changes nothing.
 *
 * @param massKilograms added to the top at the bridge, negative if taken away
 * @param stiffnessShare by which the top's stiffness grows, −0.05 for 5 % less; above −1
 * @param holeRadiusMetres added to the hole's radius
 * @param volumeCubicMetres added to the box's volume
 */
public record BodyChange(
        double massKilograms, double stiffnessShare, double holeRadiusMetres, double volumeCubicMetres) {

    /** Nothing is changed. */
    public static final BodyChange NONE = new BodyChange(0, 0, 0, 0);

    /** Refuses what is no number or leaves no stiffness. */
    public BodyChange {
        if (!Double.isFinite(massKilograms + holeRadiusMetres + volumeCubicMetres) || !(stiffnessShare > -1)) {
            throw new IllegalArgumentException("a change needs finite figures and must leave some stiffness");
        }
    }

    /** The body afterwards; empty if nothing would be left of its mass, hole or air, or if it is not known now. */
    Optional<BodyFrequencies> apply(SolvedBody body) {
        Optional<Double> mass =
                massKilograms == 0 ? Optional.of(1.0) : body.topMass().map(m -> 1 + massKilograms / m);
        Optional<Double> air =
                volumeCubicMetres == 0 ? Optional.of(1.0) : body.volume().map(v -> v / (v + volumeCubicMetres));
        Optional<Double> hole =
                holeRadiusMetres == 0 ? Optional.of(1.0) : body.hole().flatMap(this::wider);
        return body.frequencies()
                .flatMap(f ->
                        positive(mass).flatMap(m -> positive(air).flatMap(a -> hole.map(h -> apply(f, m, a, h)))));
    }

    private BodyFrequencies apply(BodyFrequencies f, double mass, double air, double hole) {
        return new BodyFrequencies(
                f.top().times(1 + stiffnessShare, air, mass),
                f.back().map(b -> b.times(1, air, 1)),
                f.helmholtzHz() * Math.sqrt(air * hole));
    }

    /** Factor on S/L′. */
    private Optional<Double> wider(HelmholtzFrequency hole) {
        double radius = hole.radiusMetres() + holeRadiusMetres;
        return radius > 0
                ? Optional.of(new HelmholtzFrequency(radius, hole.thicknessMetres(), hole.endCorrection())
                                .conductivityMetres()
                        / hole.conductivityMetres())
                : Optional.empty();
    }

    private static Optional<Double> positive(Optional<Double> factor) {
        return factor.filter(x -> x > 0 && Double.isFinite(x));
    }
}
