package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.CommonAir;
import io.github.tapwright.comparison.HumiditySensitivities;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.SubjectsAtOnce;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
 * @param questions how many questions were asked at once
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
     * @param sharing sittings that hold the same recording, as {@link io.github.tapwright.sitting.SittingStore#sharing} gives
     *     them; of these the one taken first counts
     * @return what they say
     */
    public static GroupStudy of(
            GroupSettings settings,
            List<Instrument> instruments,
            List<SittingOutline> sittings,
            List<List<SittingId>> sharing) {
        Selection selection = Selection.of(settings, instruments, sittings, sharing);
        CommonAir air = CommonAir.of(selection.taps());
        List<String> groups = settings.by().groups();
        Map<Subject, Map<String, GroupSample>> figures = figures(groups, selection, air);
        List<GroupDifference> differences = differences(groups, figures);
        SubjectsAtOnce<GroupDifference> atOnce =
                new SubjectsAtOnce<>(differences, GroupDifference::subject, GroupStudy::probability);
        return new GroupStudy(
                settings,
                air,
                members(groups, selection),
                atOnce.adjusted(GroupDifference::adjusted),
                GroupCurve.of(groups, selection),
                atOnce.count(),
                selection.plucks().unit(),
                selection.leftOut());
    }

    private static List<Membership> members(List<String> groups, Selection selection) {
        return groups.stream()
                .map(g -> new Membership(
                        g,
                        Stream.concat(selection.taps(g).stream(), selection.plucks(g).stream())
                                .toList()))
                .filter(m -> !m.sittings().isEmpty())
                .toList();
    }

    /** One subject of two groups. */
    private record Question(String first, String second, Subject subject) {}

    private static List<GroupDifference> differences(
            List<String> groups, Map<Subject, Map<String, GroupSample>> figures) {
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
            Subject subject, String first, String second, Map<String, GroupSample> byGroup) {
        GroupSample a = byGroup.get(first);
        GroupSample b = byGroup.get(second);
        return a == null || b == null
                ? Optional.empty()
                : Optional.of(
                        GroupDifference.between(subject, a, b, HumiditySensitivities.ASSUMED.of(subject.resonance())));
    }

    /** In the order of the subjects; groups that have no figure are missing. */
    private static Map<Subject, Map<String, GroupSample>> figures(
            List<String> groups, Selection selection, CommonAir air) {
        Roster taps = new Roster();
        Roster plucks = new Roster();
        for (String group : groups) {
            selection.taps(group).forEach(s -> taps.add(group, s));
            selection.plucks(group).forEach(s -> plucks.add(group, s));
        }
        Map<Subject, Map<String, GroupSample>> figures =
                taps.samples(Subject.ofTaps(), s -> air.taps(s, HumiditySensitivities.ASSUMED)::figure);
        figures.putAll(plucks.samples(
                List.of(Subject.PLUCKS), s -> subject -> selection.plucks().figure(s)));
        return figures;
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

    private static OptionalDouble probability(GroupDifference difference) {
        return difference
                .evidence()
                .map(e -> OptionalDouble.of(e.probability()))
                .orElseGet(OptionalDouble::empty);
    }
}
