package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.climate.MoistAir;
import io.github.tapwright.climate.RoomClimate;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.statistics.Estimate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ClimateCorrectionTest {

    private static final RoomClimate WARM = new RoomClimate(27, 50);
    private static final RoomClimate COOL = new RoomClimate(20, 50);
    private static final HumiditySensitivities HUMIDITY = HumiditySensitivities.ASSUMED;

    /** The two-mass guitar A of validation/body: its top gives way, which takes part of the speed of sound back. */
    @Test
    void theMainAirIsCorrectedAsTheTwoMassModelHasIt() {
        double top = 165;
        double helmholtz = 127.118;
        double spring = 71.4753;
        double speed = speed(COOL) / speed(WARM);
        double warm = lower(top, helmholtz, spring);
        double cool = lower(top, speed * helmholtz, speed * spring);

        Estimate added = ClimateCorrection.of(warm, Optional.of(ModeName.MAIN_AIR), air(WARM), air(COOL), HUMIDITY)
                .orElseThrow()
                .parts()
                .get(0)
                .added();

        assertThat(added.value()).isCloseTo(cool - warm, within(0.2 * added.standardUncertainty()));
        assertThat(added.standardUncertainty()).isLessThan(0.5 * Math.abs(added.value()));
        System.out.printf(
                "main air of guitar A, 27 to 20 °C: %.2f ± %.2f Hz, model %.2f Hz%n",
                added.value(), added.standardUncertainty(), cool - warm);
    }

    private static double lower(double top, double helmholtz, double spring) {
        double closed = top * top + spring * spring;
        double hole = helmholtz * helmholtz;
        double coupling = 4 * hole * spring * spring;
        return Math.sqrt((closed + hole - Math.sqrt((closed - hole) * (closed - hole) + coupling)) / 2);
    }

    private static double speed(RoomClimate climate) {
        return MoistAir.of(climate).soundSpeedMetresPerSecond().orElseThrow();
    }

    private static Air air(RoomClimate climate) {
        return new Air(Optional.of(climate.temperatureCelsius()), Optional.of(climate.relativeHumidityPercent()));
    }
}
