package io.github.tapwright.comparison.group;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.MixedFit;
import io.github.tapwright.statistics.MixedModel;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The same difference through every sitting: y = b₀ + b₁·group (+ b₂·humidity) + instrument + e, see {@link MixedModel}.
 *
 * <p>Where humidity is known for all sittings and varies within instruments it takes its own coefficient and the figures enter as
 * measured; else they enter in the common air.
 *
 * @param difference b₁, second minus first group
 * @param perPointOfHumidity b₂; empty where humidity is no part of the model
 * @param betweenInstruments standard deviation between instruments of a group
 * @param betweenSittings standard deviation between sittings of an instrument
 * @param sittings how many
 */
public record MixedDifference(
        Estimate difference,
        Optional<Estimate> perPointOfHumidity,
        double betweenInstruments,
        double betweenSittings,
        int sittings) {

    /** Empty where no instrument has several sittings that differ, or they leave no scatter to judge by. */
    static Optional<MixedDifference> of(GroupSample first, GroupSample second) {
        int sittings = first.sittings() + second.sittings();
        if (sittings <= first.count() + second.count()) {
            return Optional.empty();
        }
        boolean humidity = humidityTells(first, second);
        try {
            MixedFit fit = MixedModel.randomInterceptOf(
                    Stream.concat(first.observed(0, humidity), second.observed(1, humidity))
                            .toList());
            return Optional.of(new MixedDifference(
                    fit.fixedEffects().get(1),
                    humidity ? Optional.of(fit.fixedEffects().get(2)) : Optional.empty(),
                    fit.groupStandardDeviation(),
                    fit.residualStandardDeviation(),
                    sittings));
        } catch (IllegalArgumentException noScatterLeft) {
            // Sittings that agree to the last digit: the means per instrument say all there is to say.
            return Optional.empty();
        }
    }

    private static boolean humidityTells(GroupSample first, GroupSample second) {
        return first.humidityKnown()
                && second.humidityKnown()
                && (first.humidityVaries() || second.humidityVaries())
                && first.sittings() + second.sittings() >= first.count() + second.count() + 2;
    }
}
