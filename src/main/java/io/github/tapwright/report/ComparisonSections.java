package io.github.tapwright.report;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.TwoSittings;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import io.github.tapwright.sitting.Sitting;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How a sitting compares with an earlier one: first whether they may be compared, then figures, then words. */
final class ComparisonSections {

    private final ComparedFindings found;
    private final TwoSittings two;
    private final ReportKind kind;
    private final Optional<ComparedFindings.Illustration> drawn;
    private final Pictures pictures;
    private final ZoneId zone;

    ComparisonSections(ComparedFindings found, ReportKind kind, Pictures pictures, ZoneId zone) {
        this.found = found;
        this.two = found.two();
        this.kind = kind;
        this.drawn = found.drawn(kind);
        this.pictures = pictures;
        this.zone = zone;
    }

    /** Whether both sittings stand in one picture, so that the later needs none of its own. */
    boolean isDrawn() {
        return drawn.isPresent();
    }

    List<Section> sections() {
        boolean client = kind == ReportKind.CLIENT;
        List<Node> content = new ArrayList<>();
        content.add(Words.paragraph(
                "A is " + label(two.first()) + "; B is " + label(two.second()) + ", which this report is about."));
        if (!client) {
            draw(content);
        }
        content.add(Element.of(Tag.H3, "May they be compared?"));
        content.addAll(client ? conditionsInBrief() : conditionsInFull());
        content.addAll(client ? found.inBrief() : found.inFull());
        if (client) {
            draw(content);
        }
        return List.of(new Section("Compared with sitting " + two.first().id() + other(), content));
    }

    private String other() {
        return two.first().instrument().equals(two.second().instrument())
                ? ""
                : " of guitar " + two.first().instrument();
    }

    private String label(Sitting s) {
        return "sitting " + s.id() + " of guitar " + s.instrument() + ", "
                + s.takenAt().text(zone) + ", "
                + s.conditions().stage().map(Stage::words).orElse("stage unknown");
    }

    private void draw(List<Node> content) {
        drawn.ifPresent(d -> content.add(pictures.figure(d.picture(), d.alternative(), d.caption())));
    }

    /** What is not fine; that all is fine where nothing is not. */
    private List<Node> conditionsInBrief() {
        Comparability comparability = two.comparability();
        List<String> lines = new ArrayList<>();
        for (ConditionCheck c : comparability.troubles()) {
            lines.add(c.condition() + ", " + c.worst().words() + ": " + c.reason());
        }
        if (lines.isEmpty()) {
            lines.add(comparability.checks().stream()
                            .map(ConditionCheck::condition)
                            .collect(Collectors.joining(", ")) + ": fine");
        }
        comparability.despite().map(ComparisonSections::insisted).ifPresent(lines::add);
        return List.of(Words.list(lines));
    }

    /** Every condition with what it does to each quantity, the worst first. */
    private List<Node> conditionsInFull() {
        Comparability comparability = two.comparability();
        Grid grid = Grid.of("condition|", "frequency|", "decay|", "level|", "why|");
        comparability.troubles().forEach(c -> add(c, grid));
        comparability.checks().stream().filter(c -> c.worst() == Grade.FINE).forEach(c -> add(c, grid));
        List<Node> content = new ArrayList<>(List.of(grid.element()));
        comparability
                .despite()
                .map(ComparisonSections::insisted)
                .map(Words::paragraph)
                .ifPresent(content::add);
        return content;
    }

    private static void add(ConditionCheck c, Grid grid) {
        grid.add(
                c.condition(),
                c.grade(Quantity.FREQUENCY).words(),
                c.grade(Quantity.DECAY_TIME).words(),
                c.grade(Quantity.LEVEL).words(),
                c.reason());
    }

    private static String insisted(String why) {
        return "Refused figures are shown all the same, because: " + why;
    }
}
