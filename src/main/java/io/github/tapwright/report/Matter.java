package io.github.tapwright.report;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.time.ZoneId;
import java.util.Optional;

/**
 * What a report of a sitting is made from.
 *
 * @param instrument whose sitting it was
 * @param sitting the sitting
 * @param taps a sitting of taps a run of notes can be held against; empty if there is none
 * @param spread how far setting up again moves figures
 * @param zone where the workshop is
 * @param pictures where the report's pictures go
 */
record Matter(
        Instrument instrument,
        Sitting sitting,
        Optional<Sitting> taps,
        SetUpSpread spread,
        ZoneId zone,
        Pictures pictures) {

    /** A figure of this sitting as another day would doubt it: setting up again is in its uncertainty. */
    Estimate another(Quantity quantity, Estimate found) {
        return UncertaintyBudget.independent(
                        found.value(),
                        new Component("fit and strikes", found, 1),
                        new Component("setting up", spread.of(quantity, found.value()), 1))
                .combined();
    }
}
