package io.github.tapwright.report;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.group.GroupSettings;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;
import java.util.Optional;

/** What a report is about. */
public sealed interface ReportSubject {

    /**
     * One sitting.
     *
     * @param sitting of taps, notes or plucks
     * @param spread how far setting up again moves figures; empty for the study that holds, or cautious figures
     */
    record OfSitting(SittingId sitting, Optional<SetUpSpread> spread) implements ReportSubject {

        /**
         * One sitting, read with what the bench knows.
         *
         * @param sitting of taps, notes or plucks
         */
        public OfSitting(SittingId sitting) {
            this(sitting, Optional.empty());
        }
    }

    /**
     * One sitting, and how it compares with an earlier one of the same kind: taps, notes or plucks.
     *
     * @param sitting the later one, which the report is about
     * @param against the earlier one
     * @param settings how to compare
     */
    record OfTwo(SittingId sitting, SittingId against, CompareSittings.Settings settings) implements ReportSubject {}

    /**
     * One instrument over time.
     *
     * @param instrument whose
     * @param spread how far setting up again moves figures; empty for the study that holds, or cautious figures
     * @param window the humidity the shop keeps
     */
    record OfHistory(ShopNumber instrument, Optional<SetUpSpread> spread, ShopWindow window) implements ReportSubject {}

    /**
     * Groups of instruments.
     *
     * @param settings which groups
     */
    record OfGroups(GroupSettings settings) implements ReportSubject {}
}
