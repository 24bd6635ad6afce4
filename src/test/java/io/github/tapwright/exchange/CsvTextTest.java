package io.github.tapwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTextTest {

    private record Thing(String text, double figure, List<String> words) {}

    private static final List<Field<Thing>> FIELDS = List.of(
            Field.of("text", Thing::text),
            Field.of("figure_hz", Thing::figure),
            Field.of("words", Thing::words),
            Field.maybe("unknown", t -> Optional.empty()));

    @Test
    void aLineHoldsTheValuesInTheOrderOfTheHeader() {
        assertThat(csv(new Thing("bridge, treble side", -3.5, List.of("clipped", "outlier"))))
                .isEqualTo("text,figure_hz,words,unknown\r\n\"bridge, treble side\",-3.5,clipped; outlier,\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\tx"})
    void textThatASpreadsheetWouldRunIsDefused(String text) {
        assertThat(csv(new Thing(text, 1, List.of()))).contains("'" + text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "'=1+1",
                "''",
                "'",
                "+1",
                "-1",
                "@SUM(A1)",
                "\tx",
                "\rx",
                "\nx",
                "\uFF1D1",
                "plain",
                "3'4",
                " =1"
            })
    void takingOneApostropheOffGivesBackWhatWasTyped(String text) throws IOException {
        String cell;
        try (CSVParser parser = CSVParser.parse(csv(new Thing(text, 1, List.of())), CSVFormat.RFC4180)) {
            cell = parser.getRecords().get(1).get(0);
        }
        assertThat(cell).doesNotMatch("(?s)[=+\\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20].*");
        assertThat(cell.startsWith("'") ? cell.substring(1) : cell).isEqualTo(text);
    }

    @Test
    void aListThatStartsLikeAFormulaIsDefusedToo() {
        assertThat(csv(new Thing("a", 1, List.of("=2", "b")))).contains("'=2; b");
    }

    @Test
    void aNegativeNumberStaysANumber() {
        assertThat(csv(new Thing("a", -12.25, List.of()))).contains("a,-12.25,");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aNumberThatIsNotFiniteIsAnEmptyCell(double figure) {
        assertThat(csv(new Thing("a", figure, List.of()))).endsWith("\r\na,,,\r\n");
    }

    private static String csv(Thing thing) {
        return CsvText.of(FIELDS, List.of(thing));
    }
}
