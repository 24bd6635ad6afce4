package io.github.tapwright.statistics;

import io.github.tapwright.validation.PublishedTable;

/** Figures found by other roads, validation/small-samples. */
final class SmallSamples {

    private SmallSamples() {}

    static double derived(String quantity, String of) {
        return PublishedTable.rows("small-samples/derived.csv")
                .filter(r ->
                        r.text("quantity").equals(quantity) && r.text("case").equals(of))
                .findFirst()
                .orElseThrow()
                .number("value");
    }
}
