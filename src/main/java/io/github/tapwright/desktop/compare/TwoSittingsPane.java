package io.github.tapwright.desktop.compare;

import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.PictureChooser;
import io.github.tapwright.desktop.part.Sentences;
import io.github.tapwright.desktop.plot.CurvePane;
import io.github.tapwright.desktop.plot.PicturePane;
import io.github.tapwright.desktop.settings.SettingsModel;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.collections.FXCollections;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Two sittings: the conditions on top, the figures and words to the left, the curves to the right. */
final class TwoSittingsPane {

    private static final double HIGHEST_LIST = 188;

    private final CompareModel model;
    private final CompareView.Ways ways;
    private final Offer<Side> first;
    private final Offer<Side> second;
    private final ConditionList conditions;
    private final TableView<ComparedFigure> figures;
    private final Sentences words = new Sentences("The comparison in words");
    private final Sentences chosen = new Sentences("The chosen figure in words");
    private final CurvePane curves;
    private final PicturePane maps;
    private final VBox node = new VBox(8);

    TwoSittingsPane(CompareModel model, SettingsModel settings, CompareView.Ways ways) {
        this.model = model;
        this.ways = ways;
        this.first = offer("First sitting, A", model.first());
        this.second = offer("Second sitting, B", model.second());
        this.conditions = new ConditionList(model);
        this.figures = table();
        this.curves = new CurvePane(settings.light(), settings.a4Hz());
        this.maps = new PicturePane("Maps of where two runs of notes differ", settings.light());
        ScrollPane scrolled = new ScrollPane(maps);
        scrolled.setFitToWidth(true);
        scrolled.visibleProperty().bind(curves.visibleProperty().not());
        SplitPane split = new SplitPane(left(), new StackPane(curves, scrolled));
        split.setDividerPositions(0.6);
        VBox.setVgrow(split, Priority.ALWAYS);
        node.getChildren().setAll(choosers(), top(), split);
        node.getStyleClass().add("pane");
        model.result().addListener((InvalidationListener) o -> show());
        show();
    }

    Node node() {
        return node;
    }

    Node begin() {
        return first.node();
    }

    private Offer<Side> offer(String name, ObjectProperty<Optional<Side>> value) {
        return new Offer<>(name, "choose a sitting, or an instrument", model.choices(), Side::words, value);
    }

    private Node choosers() {
        Node a = Parts.named("A", first.node());
        Node b = Parts.named("B, set against A", second.node());
        HBox.setHgrow(a, Priority.ALWAYS);
        HBox.setHgrow(b, Priority.ALWAYS);
        first.node().setPrefWidth(330);
        second.node().setPrefWidth(330);
        HBox row = Parts.row(
                a,
                b,
                Parts.button("S_wap", "Turns the two about", model::swap),
                Parts.button("Save _picture…", "Writes the curves or maps as PNG or SVG", this::savePicture),
                Parts.button(
                        "_Report…",
                        "Makes a report of this comparison",
                        () -> model.subject().ifPresent(ways::report)));
        row.setAlignment(Pos.BOTTOM_LEFT);
        return row;
    }

    private Node top() {
        ScrollPane scroll = new ScrollPane(conditions.node());
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        // As high as the list itself, until it would leave the figures no room.
        conditions.node().heightProperty().addListener((o, before, after) -> {
            double height = Math.min(HIGHEST_LIST, after.doubleValue() + 2);
            scroll.setMinHeight(height);
            scroll.setMaxHeight(height);
        });
        scroll.setAccessibleText("May they be compared?");
        scroll.setFocusTraversable(true);
        return scroll;
    }

    private Node left() {
        chosen.node().setMinHeight(44);
        chosen.node().setPrefHeight(44);
        VBox upper = new VBox(4, figures, chosen.node());
        VBox.setVgrow(figures, Priority.ALWAYS);
        SplitPane left = new SplitPane(upper, words.node());
        left.setOrientation(Orientation.VERTICAL);
        left.setDividerPositions(0.58);
        return left;
    }

    private TableView<ComparedFigure> table() {
        TableView<ComparedFigure> table = Parts.table(
                "Differences of everything found in both",
                "Choose two different sittings of one kind above; or two instruments, then their latest taps are compared.",
                Parts.column("What", 96, false, ComparedFigure::what),
                Parts.column("Figure", 118, false, ComparedFigure::quantity),
                Parts.column("A ± u", 116, true, ComparedFigure::first),
                Parts.column("B ± u", 116, true, ComparedFigure::second),
                Parts.column("B less A, 95 %", 116, true, ComparedFigure::change95),
                Parts.column("Verdict", 100, false, ComparedFigure::verdict));
        table.getSelectionModel()
                .selectedItemProperty()
                .addListener((o, before, after) ->
                        chosen.show(after == null ? List.of() : List.of(Sentences.Sentence.remark(after.sentence()))));
        return table;
    }

    private void savePicture() {
        PictureChooser.ask(node, "Save the picture", "comparison.png").ifPresent(model::savePicture);
    }

    private void show() {
        conditions.show();
        figures.setItems(FXCollections.observableArrayList(model.figures()));
        figures.getSelectionModel().selectFirst();
        words.show(model.sentences());
        curves.setVisible(model.maps().isEmpty());
        curves.show(model.traces());
        maps.show(model.maps());
    }
}
