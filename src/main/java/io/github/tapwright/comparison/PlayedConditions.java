package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.Grade.DOUBTFUL;
import static io.github.tapwright.comparison.Grade.FINE;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Sitting;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What else matters where strings are played: who plucks, how old the strings are, and the air, for which notes are never corrected.
 *
 * <p>The player tunes, so pitch is fine in any air. Damper wood damps more, by how much nobody has measured here; more than five
 * points of humidity apart, or strings more than a week of age apart, are worth a warning (both common practice, no source).
 */
final class PlayedConditions {

    private static final long FAR_APART_DAYS = 7;

    private PlayedConditions() {}

    static List<ConditionCheck> check(Sitting first, Sitting second, ShopWindow window) {
        Pair<Double> humidity = Pair.of(first, second, s -> s.conditions().air().relativeHumidityPercent());
        List<ConditionCheck> checks = new ArrayList<>();
        if (first.latest().findings().procedure() instanceof Procedure.NoteRun) {
            checks.add(
                    ConditionCheck.of(
                            "pluck",
                            FINE,
                            FINE,
                            DOUBTFUL,
                            "each note once, by hand: its strength is the player's; plucks with a wire that breaks tell levels apart"));
        }
        checks.add(age(Pair.of(first, second, PlayedConditions::daysOfStrings)));
        checks.add(humidity(humidity));
        checks.add(window(humidity, window));
        checks.add(AirConditions.rest(
                Pair.of(first, second, s -> s.conditions().air().restedHours()), humidity, window));
        return checks;
    }

    /** To a day, which is all that strings care for; unknown where they are said to have been fitted days after they were played. */
    private static Optional<Long> daysOfStrings(Sitting sitting) {
        LocalDate played = LocalDate.ofInstant(sitting.takenAt().instant(), ZoneOffset.UTC);
        return sitting.conditions()
                .strings()
                .fittedOn()
                .map(fitted -> ChronoUnit.DAYS.between(fitted, played))
                .filter(days -> days >= -1)
                .map(days -> Math.max(0, days));
    }

    private static ConditionCheck age(Pair<Long> days) {
        String words = days.words(d -> d + " days");
        if (!days.known()) {
            return decayAndLevel(
                    "age of the strings", words + ": new strings ring longer; write down when they were fitted");
        }
        boolean far = Math.abs(days.first().orElseThrow() - days.second().orElseThrow()) > FAR_APART_DAYS;
        return far
                ? decayAndLevel("age of the strings", words + ": new strings ring longer than old ones, on any guitar")
                : ConditionCheck.all("age of the strings", FINE, words);
    }

    private static ConditionCheck humidity(Pair<Double> humidity) {
        String words = humidity.words(h -> AirConditions.figure(h) + " %");
        if (!humidity.known()) {
            return decayAndLevel("relative humidity", words + ": damper wood damps more; write it down");
        }
        return AirConditions.areFarApart(humidity)
                ? decayAndLevel(
                        "relative humidity",
                        words + ": damper wood damps more, by how much is not known; not corrected for")
                : ConditionCheck.all("relative humidity", FINE, words);
    }

    private static ConditionCheck window(Pair<Double> humidity, ShopWindow window) {
        String words = AirConditions.words(window);
        return AirConditions.isOutside(humidity, window)
                ? decayAndLevel("shop's window", words + ": one sitting lies outside; wood may not have settled")
                : ConditionCheck.all("shop's window", FINE, words);
    }

    private static ConditionCheck decayAndLevel(String condition, String reason) {
        return ConditionCheck.of(condition, FINE, DOUBTFUL, DOUBTFUL, reason);
    }
}
