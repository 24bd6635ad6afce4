package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.group.Evidence;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Summary;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** The figures of every pair of groups in a table. */
final class GroupTable {

    private GroupTable() {}

    static TableView<GroupDifference> make() {
        return Parts.table(
                "Differences between groups",
                "There are no two groups to compare.",
                Parts.column("Figure", 170, false, GroupTable::figure),
                Parts.column("First", 130, false, d -> d.first().group()),
                column("n", 34, d -> Integer.toString(d.first().count())),
                column("mean", 66, d -> mean(d, d.first())),
                column("s", 56, d -> scatter(d, d.first())),
                Parts.column("Second", 130, false, d -> d.second().group()),
                column("n", 34, d -> Integer.toString(d.second().count())),
                column("mean", 66, d -> mean(d, d.second())),
                column("s", 56, d -> scatter(d, d.second())),
                column(
                        "Difference ± 95 %",
                        116,
                        d -> d.evidence()
                                .map(e -> Figures.difference(e.difference()))
                                .orElse("too few")),
                column(
                        "g",
                        46,
                        d -> d.evidence()
                                .flatMap(Evidence::effectSize)
                                .map(g -> Figures.difference(g.value(), 1))
                                .orElse("–")),
                column("p", 60, d -> probability(d, Evidence::probability)),
                column(
                        "p, dealt out",
                        80,
                        d -> probability(d, e -> e.permutation().probability())),
                column("p, all asked", 80, d -> probability(d, Evidence::adjustedProbability)),
                Parts.column("Verdict", 110, false, GroupTable::verdict));
    }

    private static TableColumn<GroupDifference, String> column(
            String title, double width, Function<GroupDifference, String> words) {
        return Parts.column(title, width, true, words);
    }

    private static String figure(GroupDifference d) {
        Quantity quantity = d.subject().quantity();
        return d.subject().words() + (quantity.unit().isEmpty() ? "" : " (" + quantity.unit() + ")");
    }

    private static int places(GroupDifference d) {
        return d.subject().quantity() == Quantity.DECAY_TIME ? 3 : 1;
    }

    private static String mean(GroupDifference d, GroupFigures group) {
        return Figures.text(group.mean(), places(d));
    }

    private static String scatter(GroupDifference d, GroupFigures group) {
        return group.summary()
                .map(Summary::standardDeviation)
                .map(s -> Figures.text(s, places(d)))
                .orElse("–");
    }

    private static String probability(GroupDifference d, ToDoubleFunction<Evidence> of) {
        return d.evidence().map(e -> Figures.probability(of.applyAsDouble(e))).orElse("–");
    }

    private static String verdict(GroupDifference d) {
        if (d.evidence().isEmpty()) {
            return "– too few";
        }
        return GroupWordsList.differs(d) ? "≠ differs" : "? cannot tell";
    }
}
