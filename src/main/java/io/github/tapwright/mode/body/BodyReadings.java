package io.github.tapwright.mode.body;

import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * What was measured on one body.
 *
 * @param openHz resonances with the hole open: main air, main top and, if seen, main back
 * @param coveredHz with the hole covered: main top and, if openHz has it, main back; empty if not measured
 * @param load resonances with an added mass; empty if not measured
 * @param measures of the box
 */
public record BodyReadings(
        List<Estimate> openHz, Optional<List<Estimate>> coveredHz, Optional<Load> load, Measures measures) {

    /**
     * Resonances with a mass stuck to the bridge.
     *
     * @param kilograms the mass, greater than 0
     * @param covered whether the hole was covered
     * @param hz the resonances, as many as without the mass
     */
    public record Load(Estimate kilograms, boolean covered, List<Estimate> hz) {

        /** Keeps a copy of the list. */
        public Load {
            Positive.require(kilograms.value(), "added mass");
            hz = List.copyOf(hz);
        }
    }

    /**
     * Measures of the box and the air in it.
     *
     * @param volumeCubicMetres V, empty if unknown
     * @param holeRadiusMetres a, empty if unknown
     * @param topThicknessMetres t at the hole's edge, empty if unknown
     * @param air in the box
     */
    public record Measures(
            Optional<Estimate> volumeCubicMetres,
            Optional<Estimate> holeRadiusMetres,
            Optional<Estimate> topThicknessMetres,
            Air air) {}

    /** Refuses lists that do not fit each other. */
    public BodyReadings {
        openHz = List.copyOf(openHz);
        coveredHz = coveredHz.map(List::copyOf);
        int parts = openHz.size();
        if (parts < 2
                || parts > 3
                || coveredHz.filter(c -> c.size() != parts - 1).isPresent()) {
            throw new IllegalArgumentException("two or three open resonances and one covered fewer are needed");
        }
        if (load.filter(l -> l.hz().size() != (l.covered() ? parts - 1 : parts)).isPresent()) {
            throw new IllegalArgumentException("the added mass leaves as many resonances as there are without it");
        }
        if (load.isPresent() && load.get().covered() && coveredHz.isEmpty()) {
            throw new IllegalArgumentException("a covered sitting with a mass needs one without");
        }
    }

    /**
     * Whether the back is part of the model.
     *
     * @return false if it is taken as held still
     */
    public boolean liveBack() {
        return openHz.size() == 3;
    }
}
