package io.github.tapwright.sitting;

import io.github.tapwright.level.band.Band;
import io.github.tapwright.level.band.Bandwidth;
import io.github.tapwright.tap.ResponseCurve;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A response curve boiled down to third octaves: the mean of power over the curve's points in each band, in dB.
 *
 * <p>Only bands that lie wholly within the curve count.
 *
 * @param levelsDb by band, dB re the curve's highest point, lowest band first
 */
public record ThirdOctaves(Map<Band, Double> levelsDb) {

    private static final double ANY_RATE_HZ = 48_000;
    private static final List<Band> BANDS = Bandwidth.THIRD_OCTAVE.bandsWithin(ANY_RATE_HZ);

    /** Keeps a copy in the order of the bands. */
    public ThirdOctaves {
        Map<Band, Double> ordered = new LinkedHashMap<>();
        for (Band band : BANDS) {
            Double db = levelsDb.get(band);
            if (db != null) {
                ordered.put(band, db);
            }
        }
        levelsDb = Collections.unmodifiableMap(ordered);
    }

    /**
     * The bands of a curve.
     *
     * @param curve any
     * @return those it fills
     */
    public static ThirdOctaves of(ResponseCurve curve) {
        Map<Band, Double> levels = new LinkedHashMap<>();
        BANDS.forEach(b -> levelDb(curve, b).ifPresent(db -> levels.put(b, db)));
        return new ThirdOctaves(levels);
    }

    /**
     * The bands every curve fills.
     *
     * @param curves any
     * @return lowest first; empty if there is no curve
     */
    public static List<Band> common(List<ThirdOctaves> curves) {
        List<Band> common = curves.isEmpty()
                ? List.of()
                : List.copyOf(curves.get(0).levelsDb().keySet());
        for (ThirdOctaves curve : curves) {
            Set<Band> filled = curve.levelsDb().keySet();
            // Most curves fill the very same bands.
            if (!filled.containsAll(common)) {
                common = common.stream().filter(filled::contains).toList();
            }
        }
        return common;
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
