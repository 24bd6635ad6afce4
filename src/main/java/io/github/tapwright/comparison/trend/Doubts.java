package io.github.tapwright.comparison.trend;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.AirConditions;
import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.PluckedStrings;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What speaks against a history: wood that had not settled, air nobody read, a bench that changed. */
final class Doubts {

    /** Common practice, no source: new nylon strings creep for one to three days. */
    private static final int DAYS_TO_SETTLE = 3;

    private static final double RAN_TOGETHER = 0.8;

    private Doubts() {}

    /** What a sitting's own figure lacks is said of all that are shown, what feigns a drift of those it is sought in. */
    static List<String> about(
            List<SittingOutline> shown, List<SittingOutline> stretch, BenchKnowledge bench, ZoneId zone) {
        List<String> doubts = new ArrayList<>();
        figures(shown, doubts);
        jumps(stretch, doubts);
        say(
                numbers(stretch, s -> outside(s.conditions().air(), bench.window())),
                doubts,
                " outside the "
                        + Figures.plain(bench.window().lowestPercent()) + " to "
                        + Figures.plain(bench.window().highestPercent())
                        + " % the shop keeps: wood may not have settled");
        say(
                numbers(stretch, s -> freshStrings(s, zone)),
                doubts,
                " less than " + DAYS_TO_SETTLE + " days after strings were fitted: new strings creep");
        changed("support", stretch, c -> c.placing().support(), doubts);
        changed("strike tool", stretch, c -> c.placing().strikeTool(), doubts);
        changed("strike place", stretch, c -> c.placing().strikePlace(), doubts);
        if (stretch.stream().map(SittingOutline::methodVersion).distinct().count() > 1) {
            doubts.add(
                    "the sittings were analysed by different versions of the method; analyse the older ones again with"
                            + " sitting reanalyse");
        }
        seasons(stretch, doubts);
        return doubts;
    }

    private static void figures(List<SittingOutline> shown, List<String> doubts) {
        say(
                numbers(
                        shown,
                        s -> s.conditions().air().relativeHumidityPercent().isEmpty()),
                doubts,
                " without relative humidity: not corrected for it");
        say(
                numbers(
                        shown,
                        s -> s.plucks().isPresent() && !PluckedStrings.of(s).tellScatter()),
                doubts,
                " with every string plucked once: how far single plucks scatter is not in the bars; pluck each string several times");
    }

    private static void jumps(List<SittingOutline> stretch, List<String> doubts) {
        for (int i = 1; i < stretch.size(); i++) {
            SittingOutline before = stretch.get(i - 1);
            SittingOutline after = stretch.get(i);
            Optional<Double> then = before.conditions().air().relativeHumidityPercent();
            Optional<Double> now = after.conditions().air().relativeHumidityPercent();
            if (then.isPresent() && now.isPresent() && AirConditions.areFarApart(then.get(), now.get())) {
                doubts.add("humidity went from " + Figures.plain(then.get()) + " to " + Figures.plain(now.get())
                        + " % between sittings " + before.id() + " and " + after.id()
                        + ": wood follows for days, and the correction is itself an estimate");
            }
        }
    }

    private static void seasons(List<SittingOutline> stretch, List<String> doubts) {
        List<SittingOutline> known = stretch.stream()
                .filter(s -> s.conditions().air().relativeHumidityPercent().isPresent())
                .toList();
        double[] humidity = known.stream()
                .mapToDouble(s -> s.conditions().air().relativeHumidityPercent().orElseThrow())
                .toArray();
        double[] seconds = known.stream()
                .map(s -> s.takenAt().instant())
                .mapToDouble(Instant::getEpochSecond)
                .toArray();
        boolean varies = known.size() >= Drift.FEWEST
                && Arrays.stream(humidity).distinct().count() > 1;
        if (varies && Math.abs(HumidityRegression.correlation(seconds, humidity)) > RAN_TOGETHER) {
            doubts.add(
                    "humidity ran one way with time: a drift of the wood and one of the weather cannot be told apart; go on"
                            + " through another season");
        }
    }

    private static void changed(
            String what, List<SittingOutline> stretch, Function<Conditions, Optional<String>> of, List<String> doubts) {
        List<String> values = stretch.stream()
                .flatMap(s -> of.apply(s.conditions()).stream())
                .distinct()
                .toList();
        if (values.size() > 1) {
            doubts.add("the " + what + " was not always the same: " + String.join("; ", values));
        }
    }

    private static boolean outside(Air air, ShopWindow window) {
        return air.relativeHumidityPercent().filter(window::isOutside).isPresent();
    }

    private static boolean freshStrings(SittingOutline sitting, ZoneId zone) {
        LocalDate day = sitting.takenAt().instant().atZone(zone).toLocalDate();
        return sitting.conditions()
                .strings()
                .fittedOn()
                .filter(d -> !d.isAfter(day) && d.plusDays(DAYS_TO_SETTLE).isAfter(day))
                .isPresent();
    }

    private static String numbers(List<SittingOutline> stretch, Predicate<SittingOutline> which) {
        return stretch.stream().filter(which).map(s -> s.id().toString()).collect(Collectors.joining(", "));
    }

    private static void say(String numbers, List<String> doubts, String what) {
        if (!numbers.isEmpty()) {
            doubts.add((numbers.contains(",") ? "sittings " : "sitting ") + numbers + what);
        }
    }
}
