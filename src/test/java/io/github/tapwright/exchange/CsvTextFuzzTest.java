package io.github.tapwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.fuzz.TypedText;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Any text in a cell: it stays one cell, no spreadsheet runs it, and it can be had back. */
class CsvTextFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of());
    private static final String RUNS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
    private static final List<Field<String>> FIELDS =
            List.of(Field.of("text", t -> t), Field.of("words", t -> List.of(t, "b")), Field.of("end", t -> 1.5));

    @FuzzTest
    void aCellRunsNothingAndLosesNothing(byte[] bytes) {
        String text = TypedText.of(bytes);
        BOUNDS.hold(bytes.length, () -> {
            try (CSVParser parser = CSVParser.parse(CsvText.of(FIELDS, List.of(text)), CSVFormat.RFC4180)) {
                List<CSVRecord> records = parser.getRecords();
                assertThat(records).hasSize(2);
                assertThat(records.get(1).toList()).hasSize(3).last().isEqualTo("1.5");
                assertThat(undone(records.get(1).get(0))).isEqualTo(text);
                assertThat(undone(records.get(1).get(1))).isEqualTo(text + "; b");
            }
        });
    }

    private static String undone(String cell) {
        assertThat(!cell.isEmpty() && RUNS.indexOf(cell.charAt(0)) >= 0)
                .as("a spreadsheet runs it")
                .isFalse();
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}
