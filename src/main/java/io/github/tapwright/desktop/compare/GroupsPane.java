package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.PictureChooser;
import io.github.tapwright.desktop.part.Sentences;
import io.github.tapwright.desktop.plot.PictureFrame;
import io.github.tapwright.desktop.settings.SettingsModel;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.collections.FXCollections;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Groups of instruments: their picture above, words, table and members below. */
final class GroupsPane {

    private final GroupsModel model;
    private final CompareView.Ways ways;
    private final ComboBox<GroupBy> by;
    private final PictureFrame picture;
    private final ScrollPane scroll;
    private final Sentences findings = new Sentences("The groups in words");
    private final Sentences members = new Sentences("Who is in which group");
    private final TableView<GroupDifference> table = GroupTable.make();
    private final VBox node = new VBox(8);

    GroupsPane(GroupsModel model, SettingsModel settings, CompareView.Ways ways) {
        this.model = model;
        this.ways = ways;
        this.by = Parts.choice("Groups by", List.of(GroupBy.values()), GroupBy::words, model.by());
        this.picture = new PictureFrame("Picture of the groups", settings.light());
        this.scroll = new ScrollPane(picture);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setAccessibleText("Picture of the groups");
        scroll.setFocusTraversable(true);
        TabPane tabs = new TabPane(
                new Tab("In words", findings.node()),
                new Tab("Figures", table),
                new Tab("Who is in it", members.node()));
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        SplitPane split = new SplitPane(scroll, tabs);
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.64);
        VBox.setVgrow(split, Priority.ALWAYS);
        node.getChildren().setAll(choosers(), split);
        node.getStyleClass().add("pane");
        model.study().addListener((InvalidationListener) o -> show());
        model.shown().addListener((InvalidationListener) o -> draw());
    }

    Node node() {
        return node;
    }

    Node begin() {
        return by;
    }

    private Node choosers() {
        HBox row = Parts.row(
                Parts.named("Groups by", by),
                Parts.named(
                        "Sittings",
                        Parts.choice("Which sittings", List.of(StageClass.values()), StageClass::words, model.stage())),
                Parts.named(
                        "Picture", Parts.choice("Which picture", List.of(Shown.values()), Shown::words, model.shown())),
                Parts.spring(),
                Parts.button("Save _picture…", "Writes the picture as PNG or SVG", this::savePicture),
                Parts.button("_Report…", "Makes a report of these groups", () -> ways.report(model.subject())));
        row.setAlignment(Pos.BOTTOM_LEFT);
        return row;
    }

    private void savePicture() {
        PictureChooser.ask(node, "Save the picture", "groups.png").ifPresent(model::savePicture);
    }

    private void show() {
        table.setItems(FXCollections.observableArrayList(model.differences()));
        findings.show(model.findings());
        members.show(model.members());
        draw();
    }

    private void draw() {
        picture.show(model.picture(), model.shown().get().words());
    }
}
