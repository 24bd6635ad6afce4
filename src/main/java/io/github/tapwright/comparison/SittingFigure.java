package io.github.tapwright.comparison;

import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One figure of one sitting.
 *
 * @param sitting which sitting
 * @param takenAt when
 * @param found the figure as measured, in its unit, with what fit and strikes, or its plucks, leave unsure
 * @param correction what was added to bring it to the common air; empty if nothing was
 * @param humidityPercent relative humidity at the sitting; empty if unknown
 */
public record SittingFigure(
        SittingId sitting,
        Moment takenAt,
        Estimate found,
        Optional<Correction> correction,
        Optional<Double> humidityPercent) {

    private static final String SETTING_UP = "setting up";

    /**
     * A figure of a sitting.
     *
     * @param sitting which
     * @param found the figure as measured
     * @param correction what to add
     * @return the figure
     */
    public static SittingFigure of(SittingOutline sitting, Estimate found, Optional<Correction> correction) {
        return new SittingFigure(
                sitting.id(),
                sitting.takenAt(),
                found,
                correction,
                sitting.conditions().air().relativeHumidityPercent());
    }

    /**
     * The figure as measured.
     *
     * @return in its unit
     */
    public double measured() {
        return found.value();
    }

    /**
     * The figure in the common air with all that makes it unsure: u² = u_own² + s² + u_k², u_own what fit and strikes, or the sitting's
     * plucks, leave unsure, s the spread of setting up or plucking again, k the correction, each with its degrees of freedom. k, and s
     * where it is assumed, give the whole no more of them than it has without. Of plucks the whole has no more of them than s, as in a comparison of two sittings.
     *
     * @param subject what the figure is of
     * @param bench what is known about setting up and plucking again
     * @return the figure as one sitting knows it
     */
    public Estimate inCommonAir(Subject subject, BenchKnowledge bench) {
        Estimate again = bench.again(subject, measured());
        List<Component> components = new ArrayList<>();
        components.add(new Component("the sitting's own", found, 1));
        components.add(new Component(SETTING_UP, again, 1));
        components.addAll(Correction.components(correction));
        Stream<String> assumed = bench.spread(subject).known(subject.quantity()).assumed(SETTING_UP);
        Estimate all = new UncertaintyBudget(corrected(), components, List.of())
                .combinedAssuming(
                        Stream.concat(Correction.causes(correction), assumed).collect(Collectors.toSet()));
        return subject.equals(Subject.PLUCKS) ? all.knownNoBetterThan(again) : all;
    }

    /**
     * The figure in the common air.
     *
     * @return as measured where nothing was to be corrected
     */
    public double corrected() {
        // Without a lambda and its boxed numbers: thousands of sittings ask this for every quantity.
        return correction.isPresent() ? measured() + correction.get().added() : measured();
    }

    /**
     * What one cause contributed to the correction.
     *
     * @param cause such as "humidity"
     * @return in the figure's unit, 0 if nothing
     */
    public double added(String cause) {
        return correction.isPresent() ? correction.get().added(cause) : 0;
    }
}
