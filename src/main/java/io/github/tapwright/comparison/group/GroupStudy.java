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
import java.util.OptionalDouble;
import java.util.stream.Collectors;

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
        List<GroupDifference> differences = differences(groups, figures);
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

    /** One subject of two groups. */
    private record Question(String first, String second, Subject subject) {}

    private static List<GroupDifference> differences(
            List<String> groups, Map<Subject, Map<String, GroupFigures>> figures) {
        List<Question> questions = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            for (int j = i + 1; j < groups.size(); j++) {
                for (Subject subject : figures.keySet()) {
                    questions.add(new Question(groups.get(i), groups.get(j), subject));
                }
            }
        }
        // Side by side because counting arrangements takes long; the order, and so every bit, stays the same.
        return questions.parallelStream()
                .flatMap(q ->
                        between(q.subject(), q.first(), q.second(), figures.getOrDefault(q.subject(), Map.of()))
                                .stream())
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
        Map<Subject, FigureTable> tables = new LinkedHashMap<>();
        Subject.ofTaps().forEach(subject -> tables.put(subject, new FigureTable()));
        tables.put(Subject.PLUCKS, new FigureTable());
        // Sittings side by side; they enter the tables in their own order, so every bit stays the same.
        List<Map<Subject, SittingFigure>> ofTaps = selection.taps().parallelStream()
                .map(sitting -> air.figures(sitting, ASSUMED))
                .toList();
        for (int i = 0; i < ofTaps.size(); i++) {
            SittingOutline sitting = selection.taps().get(i);
            ofTaps.get(i)
                    .forEach((subject, figure) ->
                            table(tables, subject).add(group(selection, sitting), sitting.instrument(), figure));
        }
        for (SittingOutline sitting : selection.plucks().used()) {
            selection
                    .plucks()
                    .figure(sitting)
                    .ifPresent(
                            f -> table(tables, Subject.PLUCKS).add(group(selection, sitting), sitting.instrument(), f));
        }
        Map<Subject, Map<String, GroupFigures>> figures = new LinkedHashMap<>();
        tables.forEach((subject, table) -> figures.put(subject, table.groups()));
        return figures;
    }

    private static FigureTable table(Map<Subject, FigureTable> tables, Subject subject) {
        return Objects.requireNonNull(tables.get(subject));
    }

    private static String group(Selection selection, SittingOutline sitting) {
        return Objects.requireNonNull(selection.groups().get(sitting.instrument()));
    }

    /**
     * The differences of each two groups.
     *
     * @return one list for each pair, in their order
     */
    public List<List<GroupDifference>> pairs() {
        return List.copyOf(differences.stream()
                .collect(Collectors.groupingBy(
                        d -> List.of(d.first().group(), d.second().group()), LinkedHashMap::new, Collectors.toList()))
                .values());
    }

    private static List<GroupDifference> adjusted(List<GroupDifference> differences) {
        return HolmAdjustment.of(
                differences,
                d -> d.evidence().map(e -> OptionalDouble.of(e.probability())).orElseGet(OptionalDouble::empty),
                GroupDifference::adjusted);
    }
}
