package io.github.tapwright.comparison.group;

import io.github.tapwright.level.band.Band;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.ThirdOctaves;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A response curve in third octaves with its level taken out: {@link ThirdOctaves} less their mean over the bands. */
final class ThirdOctaveShape {

    private ThirdOctaveShape() {}

    /** The bands every curve fills; empty if there is no curve. */
    static List<Band> commonBands(List<SittingOutline> sittings) {
        return ThirdOctaves.common(
                sittings.stream().flatMap(s -> s.thirdOctaves().stream()).toList());
    }

    /** The shape of a sitting that has a curve. */
    static Map<Band, Double> of(SittingOutline sitting, List<Band> bands) {
        Map<Band, Double> filled = sitting.thirdOctaves().orElseThrow().levelsDb();
        Map<Band, Double> levels = new LinkedHashMap<>();
        bands.forEach(b -> levels.put(b, Objects.requireNonNull(filled.get(b))));
        double mean = levels.values().stream().mapToDouble(l -> l).average().orElseThrow();
        levels.replaceAll((band, db) -> db - mean);
        return levels;
    }
}
