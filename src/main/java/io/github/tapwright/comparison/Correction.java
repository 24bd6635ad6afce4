package io.github.tapwright.comparison;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was taken out of a figure before it was compared, part by part.
 *
 * @param parts at least one
 */
public record Correction(List<Part> parts) {

    /**
     * One part.
     *
     * @param cause such as "humidity"
     * @param added what was added to the figure, with its uncertainty, in the figure's unit
     * @param basis how its size is known
     */
    public record Part(String cause, Estimate added, String basis) {}

    /** Keeps a copy of the list. */
    public Correction {
        parts = List.copyOf(parts);
    }

    /**
     * What a correction adds to a budget.
     *
     * @param correction empty where nothing was corrected
     * @return its parts, each by its cause
     */
    static List<Component> components(Optional<Correction> correction) {
        return correction.map(Correction::parts).orElse(List.of()).stream()
                .map(p -> new Component(p.cause(), p.added(), 1))
                .toList();
    }

    /**
     * Its parts in such a budget, which must make nothing surer, see {@link UncertaintyBudget#combinedAssuming}.
     *
     * @param correction empty where nothing was corrected
     * @return their names
     */
    static Stream<String> causes(Optional<Correction> correction) {
        return correction.map(Correction::parts).orElse(List.of()).stream().map(Part::cause);
    }

    /** What this one of a frequency does to its decay time, of one Q as 1/f: T·f/(f + k) = T − k·T/(f + k), k what is added to f. */
    Correction ofDecay(double seconds, double frequencyHz) {
        double factor = -seconds / (frequencyHz + added());
        List<Part> ofDecay = new ArrayList<>(parts.size()); // no stream: thousands of sittings ask for every resonance
        for (Part part : parts) {
            ofDecay.add(new Part(part.cause(), part.added().times(factor), part.basis()));
        }
        return new Correction(ofDecay);
    }

    /**
     * All of it.
     *
     * @return the sum that was added to the figure, in its unit
     */
    public double added() {
        double sum = 0;
        for (Part part : parts) {
            sum += part.added().value();
        }
        return sum;
    }

    /**
     * What one cause contributed.
     *
     * @param cause such as "humidity"
     * @return in the figure's unit, 0 if nothing
     */
    public double added(String cause) {
        double sum = 0;
        for (Part part : parts) {
            if (part.cause().equals(cause)) {
                sum += part.added().value();
            }
        }
        return sum;
    }
}
