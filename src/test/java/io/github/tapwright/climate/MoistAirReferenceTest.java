package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistAirReferenceTest {

    /** Cramer's polynomial worked by another program from the coefficients of [Cramer1993]. */
    @ParameterizedTest
    @CsvSource({
        "20, 50, 343.987",
        "20, 100, 344.614",
        "21, 40, 344.478",
        "23, 50, 345.867",
        "25, 50, 347.127",
        "30, 80, 351.006"
    })
    void speedOfSound(double celsius, double humidity, double metresPerSecond) {
        assertThat(MoistAir.of(new RoomClimate(celsius, humidity))
                        .soundSpeedMetresPerSecond()
                        .orElseThrow())
                .isCloseTo(metresPerSecond, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"0, 331.448", "20, 343.359"})
    void speedOfSoundInDryAir(double celsius, double metresPerSecond) {
        assertThat(MoistAir.of(new RoomClimate(celsius, 1e-6))
                        .soundSpeedMetresPerSecond()
                        .orElseThrow())
                .isCloseTo(metresPerSecond, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"15, 340.261", "25, 346.114"})
    void theSimplerFormulaForDryAirLiesNear(double celsius, double metresPerSecond) {
        // [ISO9613-1], A.5, leaves out what the gas is made of: 0.1 % is all it can agree to
        assertThat(MoistAir.of(new RoomClimate(celsius, 1e-6))
                        .soundSpeedMetresPerSecond()
                        .orElseThrow())
                .isCloseTo(metresPerSecond, within(0.001 * metresPerSecond));
    }

    /** The short formula of [OIML-R111] (from memory, to be verified), good to 2e-4 from 10 to 30 °C, 900 to 1100 hPa. */
    @ParameterizedTest
    @CsvSource({"20, 50, 101325", "15, 30, 95000", "27, 70, 103000", "22, 45, 100000"})
    void density(double celsius, double humidity, double pascals) {
        double expected = (0.34848 * pascals / 100 - 0.009 * humidity * Math.exp(0.061 * celsius)) / (273.15 + celsius);

        assertThat(new MoistAir(new RoomClimate(celsius, humidity), pascals)
                        .densityKgPerCubicMetre()
                        .orElseThrow())
                .isCloseTo(expected, within(2e-4 * expected));
    }

    @ParameterizedTest
    @CsvSource({"-1, 101325", "31, 101325", "20, 74000", "20, 103000"})
    void noSpeedOutsideTheSource(double celsius, double pascals) {
        assertThat(new MoistAir(new RoomClimate(celsius, 50), pascals).soundSpeedMetresPerSecond())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"14", "28"})
    void noDensityOutsideTheSource(double celsius) {
        assertThat(MoistAir.of(new RoomClimate(celsius, 50)).densityKgPerCubicMetre())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1013", "120000", "NaN"})
    void refusesPressuresNoWorkshopHas(double pascals) {
        assertThatThrownBy(() -> new MoistAir(new RoomClimate(20, 50), pascals)).hasMessageContaining("two noughts");
    }
}
