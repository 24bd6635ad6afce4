package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.plot.CurvePane;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.Property;
import javafx.collections.FXCollections;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Shows two sittings side by side: may they be compared, what it means, the figures, the curves. */
public final class CompareView {

    private final CompareModel model;
    private final CurvePane curves;
    private final VBox comparability = new VBox(3);
    private final VBox words = new VBox(3);
    private final TableView<ResonanceChange> changes = changeTable();
    private final ComboBox<Optional<SittingSummary>> first;
    private final TabPane node;

    /**
     * A view.
     *
     * @param model two sittings
     * @param groups groups of instruments
     * @param settings light and tuning note
     */
    public CompareView(CompareModel model, GroupModel groups, SettingsModel settings) {
        this.model = model;
        this.curves = new CurvePane(settings.light(), settings.now().get().a4Hz());
        this.first = chooser("First sitting, A", model.first());
        Tab two = new Tab("Two sittings", two());
        Tab byGroup = new Tab("By construction", new GroupView(groups, settings).node());
        byGroup.setOnSelectionChanged(e -> {
            if (byGroup.isSelected()) {
                groups.study();
            }
        });
        node = new TabPane(two, byGroup);
        node.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        model.compared().addListener((o, before, after) -> show(after));
        show(Optional.empty());
    }

    /**
     * The view.
     *
     * @return to be put in a window
     */
    public Node node() {
        return node;
    }

    /** Puts the cursor where one begins. */
    public void focus() {
        first.requestFocus();
    }

    private Node two() {
        TextField despite = Parts.field("Reason to compare all the same", "only where the list forbids it", model.despite());
        despite.setPrefColumnCount(18);
        Node chosen = Parts.row(
                Parts.named("A", first),
                Parts.named("B", chooser("Second sitting, B", model.second())),
                Parts.named("Compare all the same, because", despite),
                Parts.button("_Set B against A", "Compares the two sittings", model::compare));
        VBox reading = new VBox(
                10,
                Parts.heading("May they be compared?", "part-title"),
                comparability,
                Parts.heading("What it means", "part-title"),
                words);
        reading.getStyleClass().add("pane");
        ScrollPane scroll = new ScrollPane(reading);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText("Comparability and meaning");
        SplitPane figures = new SplitPane(curves, changes);
        figures.setOrientation(Orientation.VERTICAL);
        figures.setDividerPositions(0.6);
        SplitPane split = new SplitPane(scroll, figures);
        split.setDividerPositions(0.44);
        VBox.setVgrow(split, Priority.ALWAYS);
        VBox two = new VBox(8, chosen, split);
        two.getStyleClass().add("pane");
        return two;
    }

    private ComboBox<Optional<SittingSummary>> chooser(String name, Property<Optional<SittingSummary>> value) {
        ComboBox<Optional<SittingSummary>> box = new ComboBox<>(model.choices());
        box.setAccessibleText(name);
        box.setConverter(Parts.shown(s -> s.map(model::title).orElse("choose one")));
        box.setPrefWidth(250);
        box.valueProperty().bindBidirectional(value);
        return box;
    }

    private static TableView<ResonanceChange> changeTable() {
        return Parts.table(
                "Differences, B minus A",
                "Choose two sittings and press Set B against A.",
                Parts.column("Resonance", 130, false, CompareModel::name),
                Parts.column("A (Hz)", 75, true, c -> Figures.text(c.first().frequencyHz().value(), 2)),
                Parts.column("B (Hz)", 75, true, c -> Figures.text(c.second().frequencyHz().value(), 2)),
                Parts.column("Frequency (Hz)", 125, true, c -> text(c.frequencyHz())),
                Parts.column("Q", 100, true, c -> text(c.q())),
                Parts.column("Decay (s)", 125, true, c -> text(c.decayTimeSeconds())),
                Parts.column("Level (dB)", 110, true, c -> text(c.levelDb())));
    }

    private static String text(Difference difference) {
        if (!difference.shown()) {
            return "refused";
        }
        boolean differs = difference.verdict() == Difference.Verdict.DIFFERS;
        return Figures.difference(difference.estimate()) + (differs ? " ●" : "");
    }

    private void show(Optional<CompareSittings.Compared> compared) {
        comparability.getChildren().setAll(compared.map(CompareView::checks).orElse(List.of()));
        words.getChildren().setAll(model.words().stream().map(w -> (Node) Parts.paragraph("•  " + w)).toList());
        if (compared.isPresent()) {
            Label quiet = Parts.paragraph("B minus A in A's air, ± half the 95 % interval; ● marks what differs. One in"
                    + " twenty lies outside by chance alone.");
            quiet.getStyleClass().add("quiet");
            words.getChildren().add(quiet);
        }
        changes.setItems(FXCollections.observableArrayList(
                compared.map(c -> c.comparison().changes()).orElse(List.of())));
        curves.show(model.traces());
    }

    private static List<Node> checks(CompareSittings.Compared compared) {
        List<Node> lines = new ArrayList<>();
        compared.comparison().comparability().despite().ifPresent(why -> {
            Label label = Parts.paragraph("Compared although the conditions forbid it, because: " + why);
            label.getStyleClass().add("caution");
            lines.add(label);
        });
        compared.comparison().comparability().troubles().forEach(c -> lines.add(check(c)));
        String fine = compared.comparison().comparability().checks().stream()
                .filter(c -> c.worst() == Grade.FINE)
                .map(ConditionCheck::condition)
                .collect(Collectors.joining(", "));
        lines.add(Parts.paragraph(sign(Grade.FINE) + " " + (fine.isEmpty() ? "nothing" : fine) + ": fine"));
        return lines;
    }

    private static Node check(ConditionCheck check) {
        Label label = Parts.paragraph(sign(check.worst()) + " " + check.condition() + ", "
                + check.worst().words() + ": " + check.reason());
        if (check.worst() == Grade.REFUSED) {
            label.getStyleClass().add("bad");
        }
        return label;
    }

    private static String sign(Grade grade) {
        return switch (grade) {
            case FINE -> "✓";
            case CORRECTED -> "≈";
            case DOUBTFUL -> "?";
            case REFUSED -> "✗";
        };
    }
}
