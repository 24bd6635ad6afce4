package io.github.tapwright.comparison.body;

import io.github.tapwright.climate.MoistAir;
import io.github.tapwright.climate.RoomClimate;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.mode.body.Air;
import io.github.tapwright.mode.body.BodyReadings.Measures;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.Optional;

/** The box as given, else as the instrument's own page knows it. Uncertainties of a rule and a calliper: common practice, no source. */
final class BoxMeasures {

    private static final double RADIUS_U_METRES = 0.0003;
    private static final double THICKNESS_U_METRES = 0.0002;

    private BoxMeasures() {}

    static Measures of(BodyRequest.Box given, Optional<Instrument> instrument, Sitting open) {
        Optional<Double> radiusMm = given.holeRadiusMm()
                .or(() ->
                        instrument.flatMap(i -> i.body().soundholeDiameterMm()).map(d -> d / 2));
        Optional<Double> thicknessMm = given.topThicknessMm().or(() -> instrument.flatMap(BoxMeasures::layersMm));
        return new Measures(
                given.volumeLitres().map(v -> v.times(0.001)),
                radiusMm.map(r -> Estimate.of(r / 1000, RADIUS_U_METRES)),
                thicknessMm.map(t -> Estimate.of(t / 1000, THICKNESS_U_METRES)),
                air(open));
    }

    /** The top's layers together; empty unless the construction, and with it the thickness of every layer it has, is known. */
    private static Optional<Double> layersMm(Instrument instrument) {
        Construction top = instrument.construction();
        List<Layer> layers = top.kind()
                .map(k -> k == ConstructionKind.SOLID
                        ? List.of(top.outerSkin())
                        : List.of(top.outerSkin(), top.core(), top.innerSkin()))
                .orElse(List.of());
        boolean known = !layers.isEmpty()
                && layers.stream().allMatch(l -> l.thicknessMm().isPresent());
        return known
                ? Optional.of(layers.stream()
                        .flatMap(l -> l.thicknessMm().stream())
                        .mapToDouble(t -> t)
                        .sum())
                : Optional.empty();
    }

    /** Round values where the room's air is not known, or lies outside what the formulas cover. */
    private static Air air(Sitting open) {
        io.github.tapwright.sitting.Air room = open.conditions().air();
        return room.temperatureCelsius()
                .flatMap(t -> room.relativeHumidityPercent().map(h -> MoistAir.of(new RoomClimate(t, h))))
                .filter(a -> a.densityKgPerCubicMetre().isPresent()
                        && a.soundSpeedMetresPerSecond().isPresent())
                .map(a -> new Air(
                        a.densityKgPerCubicMetre().getAsDouble(),
                        a.soundSpeedMetresPerSecond().getAsDouble()))
                .orElse(Air.ROUND);
    }
}
