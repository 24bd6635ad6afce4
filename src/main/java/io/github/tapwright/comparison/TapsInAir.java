package io.github.tapwright.comparison;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.SittingOutline;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A sitting of taps and what brings its resonances to the common air, worked out once for all its figures.
 *
 * @param sitting which
 * @param named its {@link Subject#named}
 * @param corrections what is added to the frequency of each; those to which nothing is added are missing
 */
public record TapsInAir(SittingOutline sitting, Map<ModeName, Resonance> named, Map<ModeName, Correction> corrections) {

    /** Keeps copies; by the place of a name, as thousands of sittings are asked for every quantity. */
    public TapsInAir {
        named = Collections.unmodifiableMap(byPlace(named));
        corrections = Collections.unmodifiableMap(byPlace(corrections));
    }

    private static <V> Map<ModeName, V> byPlace(Map<ModeName, V> any) {
        Map<ModeName, V> byPlace = new EnumMap<>(ModeName.class);
        byPlace.putAll(any);
        return byPlace;
    }

    static TapsInAir of(SittingOutline sitting, CommonAir air, HumiditySensitivities sensitivities) {
        Map<ModeName, Resonance> named = Subject.named(sitting);
        Map<ModeName, Correction> corrections = new EnumMap<>(ModeName.class);
        named.forEach((mode, resonance) -> ClimateCorrection.of(
                        resonance.frequencyHz().value(),
                        Optional.of(mode),
                        sitting.conditions().air(),
                        air.air(),
                        sensitivities)
                .ifPresent(correction -> corrections.put(mode, correction)));
        return new TapsInAir(sitting, named, corrections);
    }

    /**
     * A figure, as measured and as it would have been in the common air.
     *
     * @param subject what of the sitting; frequencies are corrected, and decay times as far as they follow from them
     * @return the figure; empty if the sitting has none
     */
    public Optional<SittingFigure> figure(Subject subject) {
        return subject.in(named)
                .map(estimate -> SittingFigure.of(sitting, estimate, correction(subject, estimate.value())));
    }

    private Optional<Correction> correction(Subject subject, double value) {
        Optional<ModeName> mode = subject.resonance();
        Correction ofFrequency = mode.isEmpty() ? null : corrections.get(mode.get());
        Resonance resonance = mode.isEmpty() ? null : named.get(mode.get());
        if (ofFrequency == null || resonance == null) {
            return Optional.empty();
        }
        return switch (subject.quantity()) {
            case FREQUENCY -> Optional.of(ofFrequency);
            case DECAY_TIME ->
                Optional.of(ofFrequency.ofDecay(value, resonance.frequencyHz().value()));
            case Q, LEVEL -> Optional.empty();
        };
    }
}
