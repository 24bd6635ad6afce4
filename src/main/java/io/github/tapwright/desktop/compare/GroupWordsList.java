package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.group.Evidence;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.group.GroupWords;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Says a study of groups in sentences. */
final class GroupWordsList {

    private static final String CAUTION =
            "Instruments of different groups differ in more than their group: wood, maker's hand, age, strings. A difference"
                    + " here says that the groups measured here differ, not that their construction is the reason.";

    private final GroupStudy study;

    GroupWordsList(GroupStudy study) {
        this.study = study;
    }

    /** What differs first, then what cannot be told. */
    List<Sentence> findings() {
        List<GroupDifference> judged = study.differences().stream()
                .filter(d -> d.evidence().isPresent())
                .toList();
        List<Sentence> lines = new ArrayList<>();
        if (study.differences().isEmpty()) {
            lines.add(Sentence.open("There are no two groups to compare: "
                    + (study.members().isEmpty() ? "no" : "only one") + " group has a sitting that counts."
                    + " What was left out, and why, stands under “Who is in it”."));
        }
        judged.stream()
                .sorted(Comparator.comparing(d -> !differs(d)))
                .map(d -> differs(d)
                        ? Sentence.certain(GroupWords.sentence(d, study.questions()))
                        : Sentence.open(GroupWords.sentence(d, study.questions())))
                .forEach(lines::add);
        lines.addAll(tooFew());
        lines.addAll(withinInstruments(judged));
        lines.add(Sentence.warning(CAUTION));
        return lines;
    }

    /** Where nothing of a pair can be asked, that is said once for all its figures. */
    private List<Sentence> tooFew() {
        List<Sentence> lines = new ArrayList<>();
        study.pairs().forEach(differences -> {
            if (differences.stream().allMatch(d -> d.evidence().isEmpty())) {
                GroupDifference any = differences.get(0);
                lines.add(Sentence.open(any.second().group() + " against "
                        + any.first().group() + ": "
                        + differences.stream()
                                .mapToInt(d -> d.second().count())
                                .max()
                                .orElse(0) + " against "
                        + differences.stream()
                                .mapToInt(d -> d.first().count())
                                .max()
                                .orElse(0)
                        + " are too few to say anything; measure " + GroupFigures.FEWEST + " of each at least"));
            } else {
                differences.stream()
                        .filter(d -> d.evidence().isEmpty())
                        .forEach(d -> lines.add(Sentence.open(GroupWords.sentence(d, study.questions()))));
            }
        });
        return lines;
    }

    static boolean differs(GroupDifference difference) {
        return difference.evidence().filter(Evidence::differs).isPresent();
    }

    /** The same question asked of all sittings, where instruments sat more than once. */
    private static List<Sentence> withinInstruments(List<GroupDifference> judged) {
        List<Sentence> lines = new ArrayList<>();
        for (GroupDifference d : judged) {
            d.evidence().flatMap(Evidence::mixed).ifPresent(m -> {
                if (lines.isEmpty()) {
                    lines.add(Sentence.heading("All sittings at once, instruments as a random effect"));
                }
                lines.add(
                        Sentence.remark(d.subject().words() + ", " + d.second().group() + " less "
                                + d.first().group() + ": " + Figures.difference(m.difference())
                                + m.perPointOfHumidity()
                                        .map(h -> ", humidity " + Figures.difference(h) + " a point")
                                        .orElse("")
                                + ", " + Figures.count(m.sittings(), "sitting")));
            });
        }
        return lines;
    }

    /** Who stands in which group, in which air, and what was left out and why. */
    List<Sentence> members() {
        List<Sentence> lines = new ArrayList<>();
        for (GroupStudy.Membership group : study.members()) {
            lines.add(Sentence.certain(group.group() + ": "
                    + Figures.count(group.instruments().size(), "instrument") + ", "
                    + group.instruments().stream().map(ShopNumber::text).collect(Collectors.joining(", "))
                    + " (sittings "
                    + group.sittings().stream()
                            .map(SittingOutline::id)
                            .map(Object::toString)
                            .collect(Collectors.joining(", "))
                    + ")"));
        }
        lines.add(Sentence.remark("Frequencies are corrected to "
                + air(study.air().air())
                + ", where the air of a sitting is known. Each instrument weighs the same; it takes "
                + GroupFigures.FEWEST + " of each group at least to say anything."));
        lines.add(Sentence.heading("Left out"));
        if (study.leftOut().isEmpty()) {
            lines.add(Sentence.remark("nothing"));
        }
        study.leftOut()
                .forEach(l -> lines.add(
                        Sentence.warning("sitting " + l.sitting() + " of " + l.instrument() + ": " + l.reason())));
        return lines;
    }

    private static String air(Air air) {
        return air.relativeHumidityPercent()
                        .map(h -> Figures.text(h, 1) + " % relative humidity")
                        .orElse("no humidity (none is known)")
                + air.temperatureCelsius()
                        .map(t -> " and " + Figures.text(t, 1) + " °C")
                        .orElse("");
    }
}
