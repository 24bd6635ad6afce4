package io.github.tapwright.comparison;

import io.github.tapwright.climate.AirResonance;
import io.github.tapwright.climate.ClimateReading;
import io.github.tapwright.climate.CorrectedFrequency;
import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.climate.MeasuredFrequency;
import io.github.tapwright.climate.RoomClimate;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.statistics.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a resonance measured in one room would have been in another's air.
 *
 * <p>Humidity moves every resonance, each by its own {@link HumiditySensitivities}; temperature moves the main air by the speed of sound, of
 * which a share of 0.6 ± 0.2 takes part (the two-mass model for usual guitars, see {@link AirResonance}). Where the air is not known at both
 * sittings nothing is corrected.
 */
public final class ClimateCorrection {

    /** Standard uncertainties of a thermometer and a hygrometer of the better kind; common practice, no source. */
    static final double THERMOMETER_KELVIN = 0.5;

    static final double HYGROMETER_PERCENT = 2;

    /** The air's share in the main air, and how wrong it may be, see {@link AirResonance}; the wood has what it leaves. */
    static final double AIR_SHARE = 0.6;

    static final double AIR_SHARE_UNCERTAINTY = 0.2;
    static final String WOOD_SHARE_WORDS = "a share of 0.4 ± 0.2";
    private static final AirResonance USUAL_AIR = new AirResonance(AIR_SHARE, AIR_SHARE_UNCERTAINTY);
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
     * @param sensitivities how far humidity moves each resonance
     * @return what to add; empty if nothing is to be corrected, or the air is not known
     */
    public static Optional<Correction> of(
            double frequencyHz,
            Optional<ModeName> mode,
            Air measured,
            Air reference,
            HumiditySensitivities sensitivities) {
        List<Correction.Part> parts = new ArrayList<>();
        humidity(frequencyHz, measured, reference, sensitivities.of(mode), sensitivities.basis(mode))
                .ifPresent(parts::add);
        if (mode.equals(Optional.of(ModeName.MAIN_AIR))) {
            temperature(frequencyHz, measured, reference).ifPresent(parts::add);
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(new Correction(parts));
    }

    private static Optional<Correction.Part> humidity(
            double frequencyHz, Air measured, Air reference, HumiditySensitivity sensitivity, String basis) {
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
        return Optional.of(part("humidity", frequencyHz, corrected, basis));
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

    /** A main air at another temperature, its humidity left alone; empty where the air is not known or out of range. */
    static Optional<Double> atTemperature(double frequencyHz, Air measured, Air reference, double airShare) {
        return climate(measured)
                .flatMap(from -> climate(reference)
                        .flatMap(to -> new AirResonance(airShare, 0)
                                .corrected(new MeasuredFrequency(frequencyHz, 0), new ClimateReading(from, 0, 0), to)))
                .map(CorrectedFrequency::frequencyHz);
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
}
