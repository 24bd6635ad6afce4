package io.github.tapwright.comparison.body;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The low resonances of one sitting as readings of the model: the fit's uncertainty and that of setting up again.
 *
 * @param sitting where they come from
 * @param spread of setting up
 */
record SittingResonances(Sitting sitting, SetUpSpread spread) {

    private static final String SETTING_UP = "setting up";

    boolean hasBack() {
        return find(ModeName.MAIN_BACK).isPresent();
    }

    /** Lowest first: main air unless the hole is covered, main top, and main back if it takes part. */
    List<Estimate> readings(boolean withBack) {
        List<Estimate> readings = new ArrayList<>();
        if (!Companions.isCovered(sitting)) {
            readings.add(need(ModeName.MAIN_AIR));
        }
        readings.add(need(ModeName.MAIN_TOP));
        if (withBack) {
            readings.add(need(ModeName.MAIN_BACK));
        }
        readings.sort(Comparator.comparingDouble(Estimate::value));
        return readings;
    }

    private Estimate need(ModeName mode) {
        return find(mode)
                .orElseThrow(() -> new RefusedEntryException("sitting " + sitting.id() + " has no resonance named "
                        + mode.words() + "; look at it with sitting show and name one with sitting name"));
    }

    private Optional<Estimate> find(ModeName mode) {
        List<ShownResonance> named = sitting.resonances(sitting.latest()).stream()
                .filter(r -> r.mode().equals(Optional.of(mode)))
                .toList();
        if (named.size() > 1) {
            throw new RefusedEntryException("sitting " + sitting.id() + " has " + named.size() + " resonances named "
                    + mode.words() + "; take the name off all but one with sitting name");
        }
        return named.stream().findFirst().map(r -> widened(r.found().resonance().frequencyHz()));
    }

    /** Both parts as one standard uncertainty with its effective degrees of freedom; an assumed spread lends none. Source: [GUM], G.4.1. */
    private Estimate widened(Estimate hz) {
        return UncertaintyBudget.independent(
                        hz.value(),
                        new Component("fit and strikes", hz, 1),
                        new Component(SETTING_UP, spread.of(Quantity.FREQUENCY, hz.value()), 1))
                .combinedAssuming(spread.frequency().assumed(SETTING_UP).collect(Collectors.toSet()));
    }
}
