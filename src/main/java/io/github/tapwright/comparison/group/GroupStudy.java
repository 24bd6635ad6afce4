package io.github.tapwright.comparison.group;

import io.github.tapwright.climate.HumidityHistory;
import io.github.tapwright.climate.HumidityScale;
import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.comparison.CommonAir;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.HolmAdjustment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * All groups against each other in every quantity.
 *
 * <p>Formulas and sources are in docs/methods/comparison.md. The sensitivity to humidity is the assumed one for every instrument: what a
 * few sittings of one would teach about it moves that instrument's figure more than it helps.
 *
 * @param settings what was asked
 * @param air what all figures are corrected to
 * @param members one entry for each group that has an instrument, the usual group first
 * @param differences by pair of groups, then by quantity
 * @param curves the response in third octaves, one for each group that has any
 * @param questions how many probabilities were adjusted together
 * @param levelUnit what levels of plucks are measured against
 * @param leftOut sittings that were not used
 */
public record GroupStudy(
        GroupSettings settings,
        CommonAir air,
        List<Membership> members,
        List<GroupDifference> differences,
        List<GroupCurve> curves,
        int questions,
        String levelUnit,
        List<LeftOut> leftOut) {

    private static final HumiditySensitivity ASSUMED =
            HumiditySensitivity.of(new HumidityHistory(HumidityScale.RELATIVE_HUMIDITY, List.of()));

    /** Keeps copies of the lists. */
    public GroupStudy {
        members = List.copyOf(members);
        differences = List.copyOf(differences);
        curves = List.copyOf(curves);
        leftOut = leftOut.stream()
                .sorted(Comparator.comparingLong(l -> l.sitting().number()))
                .toList();
    }

    /**
     * The sittings of a group.
     *
     * @param group its name in the plural
     * @param sittings those used, of taps and of plucks
     */
    public record Membership(String group, List<SittingOutline> sittings) {

        /** Keeps a copy of the list. */
        public Membership {
            sittings = List.copyOf(sittings);
        }

        /**
         * The instruments of the group.
         *
         * @return in order of shop number
         */
        public List<ShopNumber> instruments() {
            return sittings.stream()
                    .map(SittingOutline::instrument)
                    .distinct()
                    .sorted(Comparator.comparing(ShopNumber::text))
                    .toList();
        }
    }

    /**
     * Compares groups.
     *
     * @param settings what is asked
     * @param instruments the shelf
     * @param sittings any, oldest first
     * @return what they say
     */
    public static GroupStudy of(GroupSettings settings, List<Instrument> instruments, List<SittingOutline> sittings) {
        Selection selection = Selection.of(settings, instruments, sittings);
        CommonAir air = CommonAir.of(selection.taps());
        List<String> groups = settings.by().groups();
        Map<Subject, Map<String, GroupFigures>> figures = figures(selection, air);
        List<GroupDifference> differences = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            for (int j = i + 1; j < groups.size(); j++) {
                differences.addAll(between(groups.get(i), groups.get(j), figures));
            }
        }
        long questions =
                differences.stream().filter(d -> d.evidence().isPresent()).count();
        return new GroupStudy(
                settings,
                air,
                members(groups, selection),
                adjusted(differences),
                GroupCurve.of(groups, selection),
                (int) questions,
                selection.plucks().unit(),
                selection.leftOut());
    }

    private static List<Membership> members(List<String> groups, Selection selection) {
        List<SittingOutline> all = new ArrayList<>(selection.taps());
        all.addAll(selection.plucks().used());
        return groups.stream()
                .map(g -> new Membership(
                        g,
                        all.stream()
                                .filter(s -> g.equals(selection.groups().get(s.instrument())))
                                .toList()))
                .filter(m -> !m.sittings().isEmpty())
                .toList();
    }

    private static List<GroupDifference> between(
            String first, String second, Map<Subject, Map<String, GroupFigures>> figures) {
        // Side by side because counting arrangements takes long; the order, and so every bit, stays the same.
        return figures.entrySet().parallelStream()
                .flatMap(e -> between(e.getKey(), first, second, e.getValue()).stream())
                .toList();
    }

    private static Optional<GroupDifference> between(
            Subject subject, String first, String second, Map<String, GroupFigures> byGroup) {
        GroupFigures a = byGroup.get(first);
        GroupFigures b = byGroup.get(second);
        return a == null || b == null ? Optional.empty() : Optional.of(GroupDifference.between(subject, a, b, ASSUMED));
    }

    /** In the order of the subjects; groups that have no figure are missing. */
    private static Map<Subject, Map<String, GroupFigures>> figures(Selection selection, CommonAir air) {
        Map<Subject, Map<String, GroupFigures>> figures = new LinkedHashMap<>();
        for (Subject subject : Subject.ofTaps()) {
            figures.put(subject, figures(selection, selection.taps(), s -> air.figure(subject, s, ASSUMED)));
        }
        figures.put(Subject.PLUCKS, figures(selection, selection.plucks().used(), selection.plucks()::figure));
        return figures;
    }

    private static Map<String, GroupFigures> figures(
            Selection selection,
            List<SittingOutline> sittings,
            Function<SittingOutline, Optional<SittingFigure>> figure) {
        Map<String, Map<String, List<SittingFigure>>> byInstrument = new TreeMap<>();
        for (SittingOutline sitting : sittings) {
            String group = Objects.requireNonNull(selection.groups().get(sitting.instrument()));
            figure.apply(sitting)
                    .ifPresent(f -> byInstrument
                            .computeIfAbsent(group, g -> new TreeMap<>())
                            .computeIfAbsent(sitting.instrument().text(), n -> new ArrayList<>())
                            .add(f));
        }
        Map<String, GroupFigures> figures = new TreeMap<>();
        byInstrument.forEach((group, instruments) -> figures.put(
                group,
                new GroupFigures(
                        group,
                        instruments.entrySet().stream()
                                .map(e -> new InstrumentMean(new ShopNumber(e.getKey()), e.getValue()))
                                .toList())));
        return figures;
    }

    private static List<GroupDifference> adjusted(List<GroupDifference> differences) {
        double[] adjusted = HolmAdjustment.of(differences.stream()
                .flatMap(d -> d.evidence().stream())
                .mapToDouble(Evidence::probability)
                .toArray());
        List<GroupDifference> all = new ArrayList<>();
        int next = 0;
        for (GroupDifference d : differences) {
            all.add(d.evidence().isPresent() ? d.adjusted(adjusted[next++]) : d);
        }
        return all;
    }
}
