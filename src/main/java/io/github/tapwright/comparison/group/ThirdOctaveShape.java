package io.github.tapwright.comparison.group;

import io.github.tapwright.level.band.Band;
import io.github.tapwright.level.band.Bandwidth;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.tap.ResponseCurve;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A response curve in third octaves with its level taken out: the mean of power over the curve's points in each band in dB, less the
 * mean over the bands.
 *
 * <p>Only bands that lie wholly within the curve count.
 */
final class ThirdOctaveShape {

    private static final double ANY_RATE_HZ = 48_000;

    private ThirdOctaveShape() {}

    /** The bands every curve fills; empty if there is no curve. */
    static List<Band> commonBands(List<Sitting> sittings) {
        List<ResponseCurve> curves = sittings.stream()
                .flatMap(s -> s.latest().taps().flatMap(TapResult::curve).stream())
                .toList();
        return curves.isEmpty()
                ? List.of()
                : Bandwidth.THIRD_OCTAVE.bandsWithin(ANY_RATE_HZ).stream()
                        .filter(b -> curves.stream().allMatch(c -> levelDb(c, b).isPresent()))
                        .toList();
    }

    /** The shape of a sitting that has a curve. */
    static Map<Band, Double> of(Sitting sitting, List<Band> bands) {
        ResponseCurve curve = sitting.latest().taps().flatMap(TapResult::curve).orElseThrow();
        Map<Band, Double> levels = new LinkedHashMap<>();
        bands.forEach(b -> levels.put(b, levelDb(curve, b).orElseThrow()));
        double mean = levels.values().stream().mapToDouble(l -> l).average().orElseThrow();
        levels.replaceAll((band, db) -> db - mean);
        return levels;
    }

    private static OptionalDouble levelDb(ResponseCurve curve, Band band) {
        double first = curve.points().get(0).frequencyHz();
        double last = curve.points().get(curve.points().size() - 1).frequencyHz();
        if (band.lowerHz() < first || band.upperHz() > last) {
            return OptionalDouble.empty();
        }
        OptionalDouble power = curve.points().stream()
                .filter(p -> p.frequencyHz() >= band.lowerHz() && p.frequencyHz() < band.upperHz())
                .mapToDouble(p -> Math.pow(10, p.levelDb() / 10))
                .average();
        return power.isPresent() ? OptionalDouble.of(10 * Math.log10(power.getAsDouble())) : power;
    }
}
