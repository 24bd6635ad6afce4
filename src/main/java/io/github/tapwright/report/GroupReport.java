package io.github.tapwright.report;

import io.github.tapwright.chart.GroupPicture;
import io.github.tapwright.comparison.group.Evidence;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.group.GroupWords;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.picture.GroupPictures;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Summary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Groups of instruments against each other. */
final class GroupReport {

    private final GroupStudy study;

    GroupReport(GroupStudy study) {
        this.study = study;
    }

    Draft draft(ReportKind kind) {
        Pictures pictures = new Pictures();
        List<Section> sections = new ArrayList<>();
        sections.add(Section.of("In words", Words.list(words())));
        GroupPictures.of(study)
                .map(p -> new GroupPicture("", List.of(), p.curves()))
                .ifPresent(p -> sections.add(Section.of(
                        "Response of each group",
                        pictures.figure(
                                p,
                                "Mean response of each group in third octaves",
                                "Mean response to taps in third octaves; each instrument weighs the same, its own level taken out. Shaded: 95 %"
                                        + " interval of the mean; none for fewer than " + GroupFigures.FEWEST
                                        + " instruments."))));
        if (kind == ReportKind.WORKSHOP && !study.differences().isEmpty()) {
            sections.add(figures());
        }
        sections.add(members());
        sections.add(
                Section.of(
                        "What this cannot tell",
                        Words.paragraph(
                                "Instruments of different groups differ in more than their group: wood, maker's hand, age, strings. A"
                                        + " difference here says that the groups measured here differ, not that their construction is the reason.")));
        sections.add(Cautions.section());
        return new Draft(
                "Guitars by " + study.settings().by().words(),
                List.of("Sittings " + study.settings().stage().words()),
                sections,
                pictures,
                study.differences().isEmpty() ? Optional.of("there are no two groups to compare") : Optional.empty());
    }

    private List<String> words() {
        List<GroupDifference> judged = study.differences().stream()
                .filter(d -> d.evidence().isPresent())
                .toList();
        if (study.differences().isEmpty()) {
            return List.of("There are no two groups to compare.");
        }
        if (judged.isEmpty()) {
            return List.of("Too few to say anything; it takes " + GroupFigures.FEWEST
                    + " instruments of each group at least.");
        }
        return judged.stream()
                .map(d -> GroupWords.sentence(d, study.questions()))
                .toList();
    }

    private Section figures() {
        List<Node> content = new ArrayList<>();
        study.pairs().forEach(differences -> {
            content.add(Element.of(Tag.H3, GroupWords.pair(differences.get(0))));
            content.add(table(differences));
        });
        content.add(Words.quiet(
                study.questions() == 0
                        ? "No difference is asked about: it takes " + GroupFigures.FEWEST
                                + " instruments of each group at least."
                        : "Difference: ± half its 95 % interval; p corrected for all " + study.questions()
                                + " questions asked at once; s: standard deviation between instruments."));
        return new Section("Figures", content);
    }

    private static Element table(List<GroupDifference> differences) {
        Grid grid =
                Grid.of("quantity|", "first: n", "mean", "s", "second: n", "mean", "s", "difference", "p, all asked");
        for (GroupDifference d : differences) {
            int places = d.subject().quantity().unit().equals("s") ? 3 : 2;
            grid.add(
                    d.subject().wordsWithUnit(),
                    Integer.toString(d.first().count()),
                    Figures.text(d.first().mean(), places),
                    scatter(d.first(), places),
                    Integer.toString(d.second().count()),
                    Figures.text(d.second().mean(), places),
                    scatter(d.second(), places),
                    d.evidence().map(e -> Figures.difference(e.difference())).orElse("too few"),
                    d.evidence()
                            .map(Evidence::adjustedProbability)
                            .map(Figures::probability)
                            .orElse("–"));
        }
        return grid.element();
    }

    private static String scatter(GroupFigures group, int places) {
        return group.summary()
                .map(Summary::standardDeviation)
                .map(s -> Figures.text(s, places))
                .orElse("–");
    }

    private Section members() {
        List<String> lines = new ArrayList<>();
        for (GroupStudy.Membership m : study.members()) {
            lines.add(m.group() + ": "
                    + m.instruments().stream().map(ShopNumber::text).collect(Collectors.joining(", "))
                    + " (sittings "
                    + m.sittings().stream()
                            .map(SittingOutline::id)
                            .map(Object::toString)
                            .collect(Collectors.joining(", "))
                    + ")");
        }
        study.leftOut()
                .forEach(l ->
                        lines.add("left out, sitting " + l.sitting() + " of " + l.instrument() + ": " + l.reason()));
        List<Node> content = List.of(Words.list(lines));
        return new Section("Who is in which group", content);
    }
}
