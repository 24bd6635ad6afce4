package io.github.tapwright.level;

import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.List;

/**
 * Weightings and class 1 limits. Source: [IEC61672-1], table 3; the unrounded values are computed from its annex E.
 *
 * @param index n of the exact frequency 1000·10^(n/10) Hz
 * @param roundedA weighting A as printed, dB
 * @param roundedC weighting C as printed, dB
 * @param above how much more is allowed, dB
 * @param below how much less is allowed, dB
 * @param exactA weighting A unrounded, dB
 * @param exactC weighting C unrounded, dB
 */
record WeightingTable(
        int index, double roundedA, double roundedC, double above, double below, double exactA, double exactC) {

    static final List<WeightingTable> ROWS = PublishedTable.rows("weightings/class-1.csv")
            .map(WeightingTable::of)
            .toList();

    private static WeightingTable of(PublishedRow row) {
        return new WeightingTable(
                row.whole("band"),
                row.number("rounded_a_db"),
                row.number("rounded_c_db"),
                row.number("above_db"),
                row.number("below_db"),
                row.number("exact_a_db"),
                row.number("exact_c_db"));
    }

    double frequencyHz() {
        return 1000 * Math.pow(10, index / 10.0);
    }
}
