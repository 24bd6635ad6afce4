package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupWords;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.plot.PicturePane;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.report.picture.GroupPictures;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;

/** Shows groups against each other: every instrument's point, the words, the figures, the mean curves. */
final class GroupView {

    private final GroupModel model;
    private final PicturePane points;
    private final PicturePane means;
    private final VBox words = new VBox(3);
    private final ComboBox<Subject> subject = new ComboBox<>();
    private final TableView<GroupDifference> table = differenceTable();
    private final ScrollPane node;

    GroupView(GroupModel model, SettingsModel settings) {
        this.model = model;
        this.points = new PicturePane("Every instrument's figure", settings.light());
        this.means = new PicturePane("Mean response of each group", settings.light());
        subject.setAccessibleText("Quantity shown");
        subject.setConverter(Parts.shown(Subject::words));
        subject.valueProperty().addListener((o, before, after) -> showPoints());
        table.setPrefHeight(220);
        VBox all = new VBox(
                10,
                Parts.row(
                        Parts.named("Groups by", Parts.choice("Groups by", List.of(GroupBy.values()), GroupBy::words, model.by())),
                        Parts.named(
                                "Sittings",
                                Parts.choice("Sittings", List.of(StageClass.values()), StageClass::words, model.stage())),
                        Parts.button("_Compare groups", "Compares the groups", model::study),
                        Parts.spring(),
                        Parts.named("Points of", subject)),
                words,
                points,
                table,
                means);
        all.getStyleClass().add("pane");
        node = new ScrollPane(all);
        node.setFitToWidth(true);
        node.setAccessibleText("Groups of instruments");
        model.studied().addListener((o, before, after) -> show());
    }

    Node node() {
        return node;
    }

    private void show() {
        words.getChildren().setAll(model.words().stream().map(w -> (Node) Parts.paragraph("•  " + w)).toList());
        table.setItems(FXCollections.observableArrayList(
                model.studied().get().map(s -> s.differences()).orElse(List.of())));
        Subject before = subject.getValue();
        subject.getItems().setAll(model.subjects());
        if (subject.getItems().contains(before)) {
            subject.setValue(before);
        } else {
            subject.getSelectionModel().selectFirst();
        }
        means.show(model.studied().get().flatMap(GroupPictures::of));
        showPoints();
    }

    private void showPoints() {
        points.show(Optional.ofNullable(subject.getValue())
                .flatMap(asked -> model.studied().get().flatMap(s -> GroupPictures.points(s, asked))));
    }

    private static TableView<GroupDifference> differenceTable() {
        return Parts.table(
                "Differences between groups",
                "Press Compare groups.",
                Parts.column("Quantity", 170, false, d -> d.subject().words()),
                Parts.column("Second less first", 230, false, d -> d.second().group() + " less " + d.first().group()),
                Parts.column("n", 60, true, d -> d.first().count() + ", " + d.second().count()),
                Parts.column("Means", 130, true, d -> Figures.text(d.first().mean(), 2) + ", "
                        + Figures.text(d.second().mean(), 2)),
                Parts.column("Difference (95 %)", 140, true, d -> d.evidence()
                        .map(e -> Figures.difference(e.difference()))
                        .orElse("too few")),
                Parts.column("p, all asked", 100, true, d -> d.evidence()
                        .map(e -> GroupWords.probability(e.adjustedProbability()).replace("= ", ""))
                        .orElse("–")));
    }
}
