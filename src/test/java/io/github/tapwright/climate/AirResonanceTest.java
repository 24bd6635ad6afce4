package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirResonanceTest {

    private static final RoomClimate REFERENCE = new RoomClimate(20, 50);

    private static ClimateReading at(double celsius, double humidity) {
        return new ClimateReading(new RoomClimate(celsius, humidity), 0.3, 2);
    }

    @Test
    void behindRigidWallsTheFrequencyFollowsTheSpeedOfSound() {
        CorrectedFrequency corrected = AirResonance.RIGID_WALLS
                .corrected(new MeasuredFrequency(127, 0.05), at(25, 50), REFERENCE)
                .orElseThrow();

        // 343.987/347.127, the check values of the speed of sound
        assertThat(corrected.frequencyHz()).isCloseTo(127 * 343.987 / 347.127, within(0.001));
        assertThat(corrected.correctionPercent()).isCloseTo(100 * (343.987 / 347.127 - 1), within(0.001));
        // half a relative change of absolute temperature, 0.171 %/K at 20 °C, in quadrature with the measurement
        assertThat(corrected.standardUncertaintyHz()).isCloseTo(Math.hypot(0.05, 127 * 0.0018 * 0.3), within(0.005));
        assertThat(corrected.degreesOfFreedom()).isInfinite();
    }

    @Test
    void dampAirCountsToo() {
        CorrectedFrequency warmAndDamp = AirResonance.RIGID_WALLS
                .corrected(new MeasuredFrequency(100, 0), at(10, 80), REFERENCE)
                .orElseThrow();

        assertThat(warmAndDamp.correctionPercent()).isPositive();
        assertThat(warmAndDamp.standardUncertaintyHz()).isPositive();
    }

    @Test
    void aShareThatIsNotWellKnownWidensTheResult() {
        MeasuredFrequency measured = new MeasuredFrequency(110, 0.01);
        CorrectedFrequency sure = new AirResonance(0.6, 0)
                .corrected(measured, at(28, 40), REFERENCE)
                .orElseThrow();
        CorrectedFrequency unsure = new AirResonance(0.6, 0.2)
                .corrected(measured, at(28, 40), REFERENCE)
                .orElseThrow();

        assertThat(unsure.frequencyHz()).isEqualTo(sure.frequencyHz());
        assertThat(unsure.standardUncertaintyHz()).isGreaterThan(1.5 * sure.standardUncertaintyHz());
    }

    @Test
    void withoutASpeedOfSoundThereIsNoCorrection() {
        MeasuredFrequency measured = new MeasuredFrequency(110, 0.01);

        assertThat(AirResonance.RIGID_WALLS.corrected(measured, at(33, 40), REFERENCE))
                .isEmpty();
        assertThat(AirResonance.RIGID_WALLS.corrected(measured, at(20, 40), new RoomClimate(-3, 50)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0", "1.1, 0", "NaN, 0", "0.5, -1", "0.5, 2"})
    void refusesSharesThatAreNone(double share, double uncertainty) {
        assertThatThrownBy(() -> new AirResonance(share, uncertainty)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "Infinity, 1", "100, -1", "100, Infinity"})
    void refusesWhatIsNoFrequency(double frequency, double uncertainty) {
        assertThatThrownBy(() -> new MeasuredFrequency(frequency, uncertainty))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"-1, 1", "Infinity, 1", "1, -1", "1, Infinity"})
    void refusesUncertaintiesThatAreNone(double kelvin, double percent) {
        assertThatThrownBy(() -> new ClimateReading(REFERENCE, kelvin, percent))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
