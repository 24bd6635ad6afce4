package io.github.tapwright.comparison.group;

import io.github.tapwright.level.band.Band;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.ThirdOctaves;
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

    /** The shape of a sitting that has a curve, band by band. */
    static double[] of(SittingOutline sitting, List<Band> bands) {
        Map<Band, Double> filled = sitting.thirdOctaves().orElseThrow().levelsDb();
        double[] levels = new double[bands.size()];
        double sum = 0;
        for (int i = 0; i < levels.length; i++) {
            levels[i] = Objects.requireNonNull(filled.get(bands.get(i)));
            sum += levels[i];
        }
        for (int i = 0; i < levels.length; i++) {
            levels[i] -= sum / levels.length;
        }
        return levels;
    }
}
