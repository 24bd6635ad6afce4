package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.PluckSittings;
import io.github.tapwright.comparison.SharedRecordings;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.TapSittings;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The sittings that may stand beside each other, and those that may not.
 *
 * @param groups the group of each instrument that has one
 * @param tapsByGroup sittings of taps that count, oldest first
 * @param plucks sittings of plucks that count
 * @param leftOut the others, with the reason
 */
record Selection(
        Map<ShopNumber, String> groups,
        Map<String, List<SittingOutline>> tapsByGroup,
        PluckSittings plucks,
        List<LeftOut> leftOut) {

    Selection {
        groups = Map.copyOf(groups);
        Map<String, List<SittingOutline>> copies = new TreeMap<>();
        tapsByGroup.forEach((group, sittings) -> copies.put(group, List.copyOf(sittings)));
        tapsByGroup = Collections.unmodifiableMap(copies);
        leftOut = List.copyOf(leftOut);
    }

    static Selection of(
            GroupSettings settings,
            List<Instrument> instruments,
            List<SittingOutline> sittings,
            List<List<SittingId>> sharing) {
        Map<ShopNumber, String> groups = new HashMap<>();
        instruments.forEach(i -> settings.by().groupOf(i).ifPresent(g -> groups.put(i.shopNumber(), g)));
        List<LeftOut> leftOut = new ArrayList<>();
        List<SittingOutline> fitTaps = new ArrayList<>();
        List<SittingOutline> fitPlucks = new ArrayList<>();
        for (SittingOutline sitting : sittings) {
            boolean ofPlucks = key(sitting).equals(Procedure.OpenPlucks.KEY);
            Optional<String> objection = LeftOut.reason(sitting)
                    .or(() -> groups.containsKey(sitting.instrument())
                            ? objection(sitting, settings.stage())
                            : Optional.of("the " + settings.by().words() + " of instrument " + sitting.instrument()
                                    + " is unknown; write it down with instrument edit"));
            objection.ifPresentOrElse(
                    reason -> leftOut.add(LeftOut.of(sitting, reason)),
                    () -> (ofPlucks ? fitPlucks : fitTaps).add(sitting));
        }
        Map<String, List<SittingOutline>> taps = new TreeMap<>();
        for (SittingOutline sitting : SharedRecordings.once(fitTaps, sharing, leftOut)) {
            taps.computeIfAbsent(groups.getOrDefault(sitting.instrument(), ""), g -> new ArrayList<>())
                    .add(sitting);
        }
        PluckSittings comparable = PluckSittings.among(SharedRecordings.once(fitPlucks, sharing, leftOut));
        leftOut.addAll(comparable.leftOut());
        return new Selection(groups, taps, comparable, leftOut);
    }

    /** Sittings of taps of all groups. */
    List<SittingOutline> taps() {
        return tapsByGroup.values().stream().flatMap(List::stream).toList();
    }

    /** Sittings of taps of a group, oldest first. */
    List<SittingOutline> taps(String group) {
        return tapsByGroup.getOrDefault(group, List.of());
    }

    /** Sittings of plucks of a group. */
    List<SittingOutline> plucks(String group) {
        return plucks.used().stream()
                .filter(s -> group.equals(groups.get(s.instrument())))
                .toList();
    }

    private static Optional<String> objection(SittingOutline sitting, StageClass stage) {
        return switch (key(sitting)) {
            case Procedure.BodyTaps.KEY ->
                TapSittings.objection(sitting).or(() -> stage.objection(sitting.conditions()));
            case Procedure.OpenPlucks.KEY ->
                stage == StageClass.STRUNG ? Optional.empty() : Optional.of("plucks need strings");
            default -> Optional.of("it is of " + key(sitting) + "; groups are compared by taps and plucks");
        };
    }

    private static String key(SittingOutline sitting) {
        return sitting.procedure();
    }
}
