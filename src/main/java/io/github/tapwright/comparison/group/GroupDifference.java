package io.github.tapwright.comparison.group;

import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.PermutationTest;
import io.github.tapwright.statistics.StudentProbability;
import io.github.tapwright.statistics.Summary;
import io.github.tapwright.statistics.WelchDifference;
import java.util.Optional;

/**
 * One group against another in one quantity.
 *
 * @param subject the quantity
 * @param first the group compared with
 * @param second the group compared
 * @param evidence what they say; empty where either has fewer than {@link GroupFigures#FEWEST} instruments
 */
public record GroupDifference(Subject subject, GroupFigures first, GroupFigures second, Optional<Evidence> evidence) {

    /** How wrong the share of the air in the main air may be, relative: 0.2 of 0.6, see ClimateCorrection. */
    private static final double AIR_SHARE_RELATIVE = 0.2 / 0.6;

    static GroupDifference between(
            Subject subject, GroupSample first, GroupSample second, HumiditySensitivity sensitivity) {
        boolean enough = Math.min(first.count(), second.count()) >= GroupFigures.FEWEST;
        return new GroupDifference(
                subject,
                first.figures(),
                second.figures(),
                enough ? Optional.of(evidence(subject, first, second, sensitivity)) : Optional.empty());
    }

    private static Evidence evidence(
            Subject subject, GroupSample first, GroupSample second, HumiditySensitivity sensitivity) {
        Summary a = Summary.of(first.means());
        Summary b = Summary.of(second.means());
        Estimate difference = withClimate(WelchDifference.of(a, b), first, second, sensitivity);
        return new Evidence(
                subject.quantity(),
                difference,
                PermutationTest.USUAL.ofMeans(first.means(), second.means()),
                a,
                b,
                MixedDifference.of(first, second),
                StudentProbability.twoSided(difference));
    }

    /**
     * An assumed sensitivity is wrong by the same factor for every instrument. It drops out where both groups were measured in the same
     * air on average; else its share of what was corrected between them is added: u² = u_W² + Σ(Δk·u_rel)². It is assumed, so it may make
     * a difference only less sure: ν stays that of the instruments' own scatter. Welch and Satterthwaite would count it as perfectly known,
     * and a few instruments would seem many.
     */
    private static Estimate withClimate(
            Estimate welch, GroupSample first, GroupSample second, HumiditySensitivity sensitivity) {
        double relative = sensitivity.standardUncertainty() / Math.abs(sensitivity.percentPerPoint());
        double humidity = relative * (second.humidityAdded() - first.humidityAdded());
        double temperature = AIR_SHARE_RELATIVE * (second.temperatureAdded() - first.temperatureAdded());
        double common = Math.hypot(humidity, temperature);
        return new Estimate(welch.value(), Math.hypot(welch.standardUncertainty(), common), welch.degreesOfFreedom());
    }

    GroupDifference adjusted(double probability) {
        return new GroupDifference(subject, first, second, evidence.map(e -> e.adjusted(probability)));
    }
}
