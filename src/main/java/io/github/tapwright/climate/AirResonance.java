package io.github.tapwright.climate;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the air resonance of a box follows the air.
 *
 * <p>Behind rigid walls f ∝ c, the speed of sound: +0.17 %/K. In a guitar top and air swing together, and wood does not follow the
 * air's temperature: f ∝ c^s with s below 1, here s = (f₊² − f_h² − f_a²)/(f₊² − f₋²), which follows from the sum and the product of
 * the two-mass model ([ChristensenVistisen1980]: f₊² + f₋² = f_h² + f_p² + f_a², f₊f₋ = f_h·f_p, f_h and f_a ∝ c). Full correction
 * of a guitar's main air resonance would correct too much.
 *
 * <p>u²/f² = (u_f/f)² + (s·u_c/c)² + (ln(c_ref/c)·u_s)², [GUM] 5.1.2; u_c from thermometer and hygrometer.
 *
 * @param airShare s, 0 (wood alone) to 1 (air alone)
 * @param airShareUncertainty its standard uncertainty, not negative
 */
public record AirResonance(double airShare, double airShareUncertainty) {

    /** A box that does not give way: f ∝ c. */
    public static final AirResonance RIGID_WALLS = new AirResonance(1, 0);

    private static final double STEP_KELVIN = 0.1;
    private static final double STEP_PERCENT = 1;

    /** Refuses shares that are none. */
    public AirResonance {
        if (!(airShare >= 0 && airShare <= 1) || !(airShareUncertainty >= 0 && airShareUncertainty <= 1)) {
            throw new IllegalArgumentException(
                    "the air's share lies between 0 and 1, got " + airShare + " ± " + airShareUncertainty);
        }
    }

    /**
     * The frequency as it would have been in another climate.
     *
     * @param measured the resonance
     * @param reading the air it was measured in
     * @param reference the air to compare in
     * @return the corrected frequency; empty where the speed of sound is not known, below 0 or above 30 °C
     */
    public Optional<CorrectedFrequency> corrected(
            MeasuredFrequency measured, ClimateReading reading, RoomClimate reference) {
        OptionalDouble now = MoistAir.of(reading.climate()).soundSpeedMetresPerSecond();
        OptionalDouble then = MoistAir.of(reference).soundSpeedMetresPerSecond();
        if (now.isEmpty() || then.isEmpty()) {
            return Optional.empty();
        }
        double logRatio = Math.log(then.getAsDouble() / now.getAsDouble());
        double factor = Math.exp(airShare * logRatio);
        double relative = Math.hypot(
                measured.relativeUncertainty(),
                Math.hypot(airShare * speedUncertainty(reading, now.getAsDouble()), logRatio * airShareUncertainty));
        double frequencyHz = measured.frequencyHz() * factor;
        return Optional.of(new CorrectedFrequency(
                frequencyHz, frequencyHz * relative, Double.POSITIVE_INFINITY, 100 * (factor - 1)));
    }

    /** u_c/c, by steps towards the middle of the formula's range. */
    private static double speedUncertainty(ClimateReading reading, double speed) {
        RoomClimate at = reading.climate();
        double warmer = at.temperatureCelsius() > 15 ? -STEP_KELVIN : STEP_KELVIN;
        double damper = at.relativeHumidityPercent() > 50 ? -STEP_PERCENT : STEP_PERCENT;
        double perKelvin = (speed(at.temperatureCelsius() + warmer, at.relativeHumidityPercent()) - speed) / warmer;
        double perPercent = (speed(at.temperatureCelsius(), at.relativeHumidityPercent() + damper) - speed) / damper;
        return Math.hypot(
                        perKelvin * reading.temperatureUncertaintyKelvin(),
                        perPercent * reading.humidityUncertaintyPercent())
                / speed;
    }

    private static double speed(double celsius, double percent) {
        return MoistAir.of(new RoomClimate(celsius, percent))
                .soundSpeedMetresPerSecond()
                .orElseThrow();
    }
}
