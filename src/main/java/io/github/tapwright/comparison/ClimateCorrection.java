package io.github.tapwright.comparison;

import io.github.tapwright.climate.AirResonance;
import io.github.tapwright.climate.ClimateReading;
import io.github.tapwright.climate.CorrectedFrequency;
import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.climate.MeasuredFrequency;
import io.github.tapwright.climate.RoomClimate;
import io.github.tapwright.climate.SensitivityBasis;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.statistics.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a resonance measured in one room would have been in another's air.
 *
 * <p>Humidity moves every resonance of the wood, see {@link HumiditySensitivity}; temperature moves the main air by the speed of sound, of
 * which a share of 0.6 ± 0.2 takes part (the two-mass model for usual guitars, see {@link AirResonance}). Where the air is not known at both
 * sittings nothing is corrected.
 */
public final class ClimateCorrection {

    /** Standard uncertainties of a thermometer and a hygrometer of the better kind; common practice, no source. */
    static final double THERMOMETER_KELVIN = 0.5;

    static final double HYGROMETER_PERCENT = 2;

    private static final AirResonance USUAL_AIR = new AirResonance(0.6, 0.2);
    private static final double WORTH_KELVIN = 0.05;
    private static final double WORTH_PERCENT = 0.05;

    private ClimateCorrection() {}

    /**
     * The correction of a frequency.
     *
     * @param frequencyHz as measured
     * @param mode which resonance, if known
     * @param measured the air it was measured in
     * @param reference the air to compare in
     * @param sensitivity how far humidity moves it
     * @return what to add; empty if nothing is to be corrected, or the air is not known
     */
    public static Optional<Correction> of(
            double frequencyHz, Optional<ModeName> mode, Air measured, Air reference, HumiditySensitivity sensitivity) {
        List<Correction.Part> parts = new ArrayList<>();
        humidity(frequencyHz, measured, reference, sensitivity).ifPresent(parts::add);
        if (mode.equals(Optional.of(ModeName.MAIN_AIR))) {
            temperature(frequencyHz, measured, reference).ifPresent(parts::add);
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(new Correction(parts));
    }

    private static Optional<Correction.Part> humidity(
            double frequencyHz, Air measured, Air reference, HumiditySensitivity sensitivity) {
        Pair<Double> humidity = Pair.of(measured, reference, Air::relativeHumidityPercent);
        if (!humidity.known() || distance(humidity) < WORTH_PERCENT) {
            return Optional.empty();
        }
        // The same hygrometer read twice: each reading brings its own error.
        CorrectedFrequency corrected = sensitivity.corrected(
                new MeasuredFrequency(frequencyHz, 0),
                humidity.first().orElseThrow(),
                Math.sqrt(2) * HYGROMETER_PERCENT,
                humidity.second().orElseThrow());
        return Optional.of(part("humidity", frequencyHz, corrected, basis(sensitivity)));
    }

    private static Optional<Correction.Part> temperature(double frequencyHz, Air measured, Air reference) {
        Optional<RoomClimate> from = climate(measured);
        Optional<RoomClimate> to = climate(reference);
        Pair<Double> celsius = Pair.of(measured, reference, Air::temperatureCelsius);
        if (from.isEmpty() || to.isEmpty() || distance(celsius) < WORTH_KELVIN) {
            return Optional.empty();
        }
        return USUAL_AIR
                .corrected(
                        new MeasuredFrequency(frequencyHz, 0),
                        new ClimateReading(from.get(), Math.sqrt(2) * THERMOMETER_KELVIN, 0),
                        to.get())
                .map(c -> part("temperature", frequencyHz, c, "speed of sound, of which the air's share is 0.6 ± 0.2"));
    }

    private static Optional<RoomClimate> climate(Air air) {
        return air.temperatureCelsius()
                .flatMap(t -> air.relativeHumidityPercent().map(h -> new RoomClimate(t, h)));
    }

    private static double distance(Pair<Double> pair) {
        return pair.known()
                ? Math.abs(pair.first().orElseThrow() - pair.second().orElseThrow())
                : 0;
    }

    private static Correction.Part part(String cause, double frequencyHz, CorrectedFrequency corrected, String basis) {
        return new Correction.Part(
                cause,
                new Estimate(
                        corrected.frequencyHz() - frequencyHz,
                        corrected.standardUncertaintyHz(),
                        corrected.degreesOfFreedom()),
                basis);
    }

    /** How a sensitivity is known, in words. */
    static String basis(HumiditySensitivity sensitivity) {
        return sensitivity.basis() == SensitivityBasis.LEARNT
                ? "learnt from " + sensitivity.sittings() + " sittings of this instrument"
                : "assumed for bare spruce, an estimate and not measured on this instrument";
    }
}
