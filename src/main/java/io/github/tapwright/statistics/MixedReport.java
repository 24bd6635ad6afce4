package io.github.tapwright.statistics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.RealVector;

/** Turns the optimum into what the maker asked for. */
final class MixedReport {

    /** Relative to σ, below which a standard deviation between groups is none. */
    private static final double NONE = 1e-4;
    /** Of the values' own squares, what rounding leaves of a perfect fit. */
    private static final double EXACT = 1e-18;

    private MixedReport() {}

    static MixedFit of(MixedData data, double factor) {
        RemlProfile profile = new RemlProfile(data, factor);
        if (profile.squares <= EXACT * data.squares()) {
            throw new IllegalArgumentException(RemlSearch.NOTHING_LEFT);
        }
        double sigma = Math.sqrt(profile.residualVariance());
        return new MixedFit(
                fixedEffects(data, factor, profile, sigma),
                sigma,
                sigma * Math.abs(factor),
                profile.criterion(),
                Math.abs(factor) <= NONE,
                data.groups(),
                data.observations);
    }

    private static List<Estimate> fixedEffects(MixedData data, double factor, RemlProfile profile, double sigma) {
        DegreesOfFreedom freedom = new DegreesOfFreedom(data, factor, Math.log(sigma));
        List<Estimate> effects = new ArrayList<>();
        for (int i = 0; i < data.coefficients; i++) {
            RealVector contrast = data.contrast(i);
            effects.add(new Estimate(
                    data.offset(i) + contrast.dotProduct(profile.coefficients),
                    sigma * Math.sqrt(profile.variance(contrast)),
                    freedom.of(i)));
        }
        return effects;
    }
}
