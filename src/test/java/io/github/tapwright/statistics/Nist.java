package io.github.tapwright.statistics;

import io.github.tapwright.validation.DataFile;
import io.github.tapwright.validation.PublishedTable;

/** Reference data sets and their certified values, [NIST-StRD], in validation/nist-strd. */
final class Nist {

    private Nist() {}

    static DataFile data(String dataset) {
        return DataFile.read("nist-strd/" + dataset + ".csv");
    }

    static double certified(String dataset, String quantity) {
        return PublishedTable.rows("nist-strd/certified.csv")
                .filter(r ->
                        r.text("dataset").equals(dataset) && r.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow()
                .number("value");
    }
}
