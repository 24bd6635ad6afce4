package io.github.tapwright.comparison;

import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.PluckLevels;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Sittings of plucks whose levels may stand beside each other: all by calibrations in use, or all at one known gain; about one distance.
 *
 * <p>The level of a sitting is the mean over the strings that all of them have, each weighing the same, of its plucks' largest
 * A-weighted levels (F).
 *
 * @param used the sittings
 * @param leftOut the others, with the reason
 * @param strings those that all used sittings have
 * @param unit such as "dB re 20 µPa"
 */
public record PluckSittings(List<SittingOutline> used, List<LeftOut> leftOut, Set<Integer> strings, String unit) {

    /** Keeps copies. */
    public PluckSittings {
        used = List.copyOf(used);
        leftOut = List.copyOf(leftOut);
        strings = Set.copyOf(strings);
    }

    /**
     * Chooses.
     *
     * @param plucks sittings of plucks
     * @return those that may be compared
     */
    public static PluckSittings among(List<SittingOutline> plucks) {
        List<LeftOut> leftOut = new ArrayList<>();
        List<SittingOutline> meaningful = LeftOut.without(
                plucks,
                s -> s.plucks()
                        .flatMap(PluckLevels::withdrawn)
                        .map(why -> BenchConditions.withdrawn("its calibration", s.id(), why)),
                leftOut);
        List<SittingOutline> used = keep(
                meaningful, s -> !PluckedStrings.numbers(s).isEmpty(), "no pluck of an open string was found", leftOut);
        boolean calibrated = used.stream().anyMatch(PluckSittings::calibrated);
        if (calibrated) {
            used = keep(used, PluckSittings::calibrated, "not calibrated, unlike others", leftOut);
        } else {
            Optional<String> gain = mostFrequent(used, c -> c.microphone().gain());
            used = keep(
                    used,
                    s -> gain.isPresent() && s.conditions().microphone().gain().equals(gain),
                    "levels without a calibration mean nothing at different or unknown gains",
                    leftOut);
        }
        Optional<Double> distance = mostFrequent(used, c -> c.microphone().distanceMm());
        used = keep(used, s -> near(s, distance), "the microphone stood at another distance", leftOut);
        return new PluckSittings(
                used, leftOut, commonStrings(used), calibrated ? "dB re 20 µPa" : "dB re full scale, one gain");
    }

    /**
     * How loud a sitting was, with what its plucks leave unsure; plucking again comes to that.
     *
     * @param sitting one of those used
     * @return its level; empty if the sittings have no string in common
     */
    public Optional<SittingFigure> figure(SittingOutline sitting) {
        return strings.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        SittingFigure.of(sitting, PluckedStrings.of(sitting).mean(strings), Optional.empty()));
    }

    private static List<SittingOutline> keep(
            List<SittingOutline> from, Predicate<SittingOutline> wanted, String otherwise, List<LeftOut> leftOut) {
        return LeftOut.without(from, s -> wanted.test(s) ? Optional.empty() : Optional.of(otherwise), leftOut);
    }

    private static boolean calibrated(SittingOutline sitting) {
        return sitting.plucks().filter(PluckLevels::calibrated).isPresent();
    }

    private static boolean near(SittingOutline sitting, Optional<Double> distance) {
        return distance.isEmpty()
                || sitting.conditions()
                        .microphone()
                        .distanceMm()
                        .filter(d -> !BenchConditions.isSameDistance(distance.get(), d))
                        .isEmpty();
    }

    private static <T> Optional<T> mostFrequent(List<SittingOutline> sittings, Function<Conditions, Optional<T>> of) {
        Map<T, Long> counts = sittings.stream()
                .flatMap(s -> of.apply(s.conditions()).stream())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private static Set<Integer> commonStrings(List<SittingOutline> used) {
        return used.stream()
                .map(PluckedStrings::numbers)
                .reduce((a, b) -> {
                    a.retainAll(b);
                    return a;
                })
                .orElseGet(TreeSet::new);
    }
}
