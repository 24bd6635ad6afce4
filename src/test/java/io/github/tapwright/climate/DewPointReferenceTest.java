package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DewPointReferenceTest {

    /** Worked from the constants of [WMO8] by another program; tolerance is the last digit. */
    @ParameterizedTest
    @CsvSource({
        "20, 50, 23.3260, 9.255", "20, 45, 23.3260, 7.698", "25, 40, 31.6006, 10.457",
        "15, 60, 17.0167, 7.292", "30, 70, 42.3372, 23.927", "10, 30, 12.2603, -6.811"
    })
    void pressureAndDewPoint(double celsius, double humidity, double hectopascals, double dewPoint) {
        assertThat(DewPoint.saturationHectopascals(celsius)).isCloseTo(hectopascals, within(5.1e-5));
        assertThat(DewPoint.celsius(new RoomClimate(celsius, humidity))).isCloseTo(dewPoint, within(5.1e-4));
    }

    @ParameterizedTest
    @CsvSource({"20, 2.33663", "25, 3.16604"})
    void anotherFormulaAgreesToAThousandth(double celsius, double kilopascals) {
        // [ISO9613-1], annex B; two formulas for one quantity, known to differ by some 0.2 %
        assertThat(DewPoint.saturationHectopascals(celsius) / 10).isCloseTo(kilopascals, within(0.002 * kilopascals));
    }

    @Test
    void fullAirHasItsDewPointAtItsTemperature() {
        assertThat(DewPoint.celsius(new RoomClimate(18, 100))).isCloseTo(18, within(1e-12));
    }

    @Test
    void refusesTemperaturesOutsideTheFormula() {
        assertThatThrownBy(() -> DewPoint.saturationHectopascals(61)).hasMessageContaining("61");
        assertThatThrownBy(() -> DewPoint.saturationHectopascals(-46)).hasMessageContaining("-46");
    }
}
