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
    void aTopThatGivesWayTakesPartOfTheCorrectionBack() {
        // the two-mass guitar A of validation/body: f₋ with a speed of sound 1 % higher against f₋ as it is
        double top = 165;
        double helmholtz = 127.118;
        double spring = 71.4753;
        double now = lower(top, helmholtz, spring);
        double then = lower(top, 1.0001 * helmholtz, 1.0001 * spring);

        AirResonance air =
                AirResonance.coupled(109.921, 190.814, helmholtz, spring, 0.1).orElseThrow();

        assertThat(air.airShare()).isCloseTo(Math.log(then / now) / Math.log(1.0001), within(1e-4));
        assertThat(air.airShare()).isCloseTo(0.62, within(0.005));
    }

    private static double lower(double top, double helmholtz, double spring) {
        double closed = top * top + spring * spring;
        double hole = helmholtz * helmholtz;
        double coupling = 4 * hole * spring * spring;
        return Math.sqrt((closed + hole - Math.sqrt((closed - hole) * (closed - hole) + coupling)) / 2);
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
    @CsvSource({"190, 110, 127, 71", "110, 190, 189, 71", "110, 190, 80, 10"})
    void fourNumbersThatDoNotFitTheModelGiveNoShare(double lower, double upper, double helmholtz, double spring) {
        assertThat(AirResonance.coupled(lower, upper, helmholtz, spring, 0)).isEmpty();
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
