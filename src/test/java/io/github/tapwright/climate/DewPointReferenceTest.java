package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DewPointReferenceTest {

    /** Worked from the constants of [WMO8] by another program; tolerance is the last digit. */
    @ParameterizedTest
    @CsvSource({
        "20, 50, 9.255", "20, 45, 7.698", "25, 40, 10.457",
        "15, 60, 7.292", "30, 70, 23.927", "10, 30, -6.811"
    })
    void dewPoint(double celsius, double humidity, double dewPoint) {
        assertThat(DewPoint.celsius(new RoomClimate(celsius, humidity))).isCloseTo(dewPoint, within(5.1e-4));
    }

    @Test
    void fullAirHasItsDewPointAtItsTemperature() {
        assertThat(DewPoint.celsius(new RoomClimate(18, 100))).isCloseTo(18, within(1e-12));
    }
}
