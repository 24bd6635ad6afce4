package io.github.tapwright.comparison;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.SittingOutline;
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

    /** Keeps copies. */
    public TapsInAir {
        named = Map.copyOf(named);
        corrections = Map.copyOf(corrections);
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
        Optional<Correction> ofFrequency = subject.resonance().flatMap(m -> Optional.ofNullable(corrections.get(m)));
        return switch (subject.quantity()) {
            case FREQUENCY -> ofFrequency;
            case DECAY_TIME ->
                ofFrequency.flatMap(k -> subject.resonance()
                        .map(named::get)
                        .map(r -> k.ofDecay(value, r.frequencyHz().value())));
            case Q, LEVEL -> Optional.empty();
        };
    }
}
