package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.Grade.CORRECTED;
import static io.github.tapwright.comparison.Grade.DOUBTFUL;
import static io.github.tapwright.comparison.Grade.FINE;

import io.github.tapwright.climate.Settling;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.sitting.Air;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The air of the room: humidity softens and loads the wood, temperature speeds the air up.
 *
 * <p>More than five points of humidity apart is worth a warning even where it is corrected for (common practice, no source).
 */
public final class AirConditions {

    static final double FAR_APART_PERCENT = 5;
    private static final double FAR_APART_KELVIN = 5;
    private static final double SAME = 0.05;

    private AirConditions() {}

    static List<ConditionCheck> check(Air a, Air b, BenchKnowledge bench) {
        Pair<Double> humidity = Pair.of(a, b, Air::relativeHumidityPercent);
        Pair<Double> temperature = Pair.of(a, b, Air::temperatureCelsius);
        return List.of(
                humidity(humidity, bench),
                temperature(temperature, humidity),
                window(humidity, bench.window()),
                rest(Pair.of(a, b, Air::restedHours), humidity, bench.window()));
    }

    private static ConditionCheck humidity(Pair<Double> humidity, BenchKnowledge bench) {
        String words = humidity.words(h -> figure(h) + " %");
        if (!humidity.known()) {
            return ConditionCheck.of(
                    "relative humidity",
                    DOUBTFUL,
                    DOUBTFUL,
                    FINE,
                    words + ": humidity moves every resonance; write it down");
        }
        if (apart(humidity) < SAME) {
            return ConditionCheck.all("relative humidity", FINE, words);
        }
        String basis = bench.sensitivities().basis();
        boolean far = areFarApart(humidity);
        return ConditionCheck.of(
                "relative humidity",
                far ? DOUBTFUL : CORRECTED,
                far ? DOUBTFUL : FINE,
                FINE,
                words + ": frequencies are corrected to A's, the sensitivity " + basis
                        + (far ? "; this far apart the correction is large" : ""));
    }

    private static ConditionCheck temperature(Pair<Double> temperature, Pair<Double> humidity) {
        String words = temperature.words(t -> figure(t) + " °C");
        if (!temperature.known()) {
            return ConditionCheck.of(
                    "temperature", DOUBTFUL, FINE, FINE, words + ": warm air raises the main air; write it down");
        }
        if (apart(temperature) < SAME) {
            return ConditionCheck.all("temperature", FINE, words);
        }
        if (!humidity.known()) {
            return ConditionCheck.of(
                    "temperature",
                    DOUBTFUL,
                    FINE,
                    FINE,
                    words + ": warm air raises the main air; not corrected, as that takes both humidities");
        }
        boolean far = apart(temperature) > FAR_APART_KELVIN;
        return ConditionCheck.of(
                "temperature",
                far ? DOUBTFUL : CORRECTED,
                FINE,
                FINE,
                words + ": the main air is corrected to A's by the speed of sound"
                        + (far ? "; this far apart the correction is large" : ""));
    }

    private static ConditionCheck window(Pair<Double> humidity, ShopWindow window) {
        return isOutside(humidity, window)
                ? ConditionCheck.of(
                        "shop's window",
                        DOUBTFUL,
                        FINE,
                        FINE,
                        words(window)
                                + ": one sitting lies outside; wood may not have settled, look again after a day inside")
                : ConditionCheck.all("shop's window", FINE, words(window));
    }

    static boolean isOutside(Pair<Double> humidity, ShopWindow window) {
        return Stream.of(humidity.first(), humidity.second())
                .flatMap(Optional::stream)
                .anyMatch(window::isOutside);
    }

    static String words(ShopWindow window) {
        return "the shop keeps " + figure(window.lowestPercent()) + " to " + figure(window.highestPercent()) + " %";
    }

    /**
     * Whether two humidities are more than five points apart.
     *
     * @param percent relative humidity of one sitting
     * @param otherPercent of another
     * @return true if they are
     */
    public static boolean areFarApart(double percent, double otherPercent) {
        return Math.abs(percent - otherPercent) > FAR_APART_PERCENT;
    }

    /** Where both are known. */
    static boolean areFarApart(Pair<Double> humidity) {
        return areFarApart(humidity.first().orElseThrow(), humidity.second().orElseThrow());
    }

    /** Wood follows the air within hours to days; the furthest way it may have had to go is to the shop's window or to the other sitting. */
    static ConditionCheck rest(Pair<Double> hours, Pair<Double> humidity, ShopWindow window) {
        String words = hours.words(h -> figure(h) + " h in this air");
        double apart = humidity.known() ? apart(humidity) : 0;
        return Stream.of(
                        lag(hours.first(), humidity.first(), window, apart),
                        lag(hours.second(), humidity.second(), window, apart))
                .flatMap(Optional::stream)
                .filter(v -> !v.settled())
                .max(Comparator.comparingDouble(Settling.Verdict::hoursStillNeeded))
                .map(v -> ConditionCheck.of(
                        "rest in the room",
                        DOUBTFUL,
                        DOUBTFUL,
                        FINE,
                        words + ": the wood may still lag behind the air by " + figure(v.lagPercentHumidity())
                                + " points of humidity; let it lie for another "
                                + Math.round(Math.ceil(v.hoursStillNeeded()))
                                + " h"))
                .orElseGet(() -> ConditionCheck.all("rest in the room", FINE, words));
    }

    private static Optional<Settling.Verdict> lag(
            Optional<Double> hours, Optional<Double> humidity, ShopWindow window, double apart) {
        double outside = humidity.map(h -> Math.max(window.lowestPercent() - h, h - window.highestPercent()))
                .orElse(0.0);
        return hours.map(h -> Settling.USUAL.judge(Math.max(apart, Math.max(0, outside)), h));
    }

    private static double apart(Pair<Double> pair) {
        return Math.abs(pair.first().orElseThrow() - pair.second().orElseThrow());
    }

    static String figure(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.1f", value);
    }
}
