package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Table 4-2 of [WoodHandbook2021], validation/climate/emc-table.csv; printed to 0.1 %. */
class WoodMoistureReferenceTest {

    static Stream<PublishedRow> table() {
        return PublishedTable.rows("climate/emc-table.csv").filter(r -> r.number("temperature_f") <= 110);
    }

    @ParameterizedTest
    @MethodSource("table")
    void bothFormsOfTheEquationGiveTheTable(PublishedRow row) {
        double fahrenheit = row.number("temperature_f");
        double humidity = row.number("relative_humidity_percent");
        double printed = row.number("moisture_percent");

        assertThat(WoodMoisture.equilibriumPercent(RoomClimate.ofFahrenheit(fahrenheit, humidity)))
                .isCloseTo(printed, within(0.1));
        assertThat(WoodMoisture.equilibriumPercentFahrenheit(fahrenheit, humidity))
                .isCloseTo(printed, within(0.1));
    }

    @ParameterizedTest
    @CsvSource({"40, 7.7", "50, 9.2", "65, 12.0", "90, 20.5"})
    void printedAnchorsAt70Fahrenheit(double humidity, double printed) {
        // these four cells are quoted from the printed table, so half of its last digit is all that is allowed
        assertThat(WoodMoisture.equilibriumPercentFahrenheit(70, humidity)).isCloseTo(printed, within(0.051));
    }

    @ParameterizedTest
    @CsvSource({"-10.1, 50", "50.1, 50", "NaN, 50", "20, 0", "20, 100.1", "20, NaN"})
    void refusesAirNoMakerWorksIn(double celsius, double humidity) {
        assertThatThrownBy(() -> new RoomClimate(celsius, humidity)).isInstanceOf(IllegalArgumentException.class);
    }
}
