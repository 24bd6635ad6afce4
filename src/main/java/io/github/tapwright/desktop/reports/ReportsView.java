package io.github.tapwright.desktop.reports;

import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.ReportKind;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** Asks what a report shall be about, for whom and how written, makes it, and offers to open it. */
public final class ReportsView {

    private static final double FORM_WIDTH = 560;

    private final ReportsModel model;
    private final Consumer<Path> open;
    private final ComboBox<About> about;
    private final VBox subject = new VBox(8);
    private final VBox made = new VBox(6);
    private final Offer<SittingChoice> sitting;
    private final Offer<SittingChoice> against;
    private final TextField despite;
    private final Offer<ShopNumber> instrument;
    private final ComboBox<GroupBy> by;
    private final ComboBox<StageClass> stage;
    private final HBox node;

    /**
     * A view.
     *
     * @param model the report asked for
     * @param shop what the workshop says of itself
     * @param open opens a file in the program the system has for it
     */
    public ReportsView(ReportsModel model, ShopModel shop, Consumer<Path> open) {
        this.model = model;
        this.open = open;
        ReportForm form = model.form();
        this.about = Parts.choice("About", List.of(About.values()), About::words, form.about());
        this.sitting = sittings("Sitting", model.sittings(), form.sitting());
        this.against = sittings("Earlier sitting", model.alike(), form.against());
        this.despite = Parts.field(
                "Reason to compare in spite of the conditions", "only where the conditions forbid it", form.despite());
        this.instrument =
                new Offer<>("Instrument", "choose one", model.instruments(), n -> "Instrument " + n, form.instrument());
        this.by = Parts.choice("Groups by", List.of(GroupBy.values()), GroupBy::words, form.by());
        this.stage = Parts.choice("Which sittings", List.of(StageClass.values()), StageClass::words, form.stage());
        VBox left = new VBox(
                12,
                Parts.heading("Make a report", "screen-title"),
                Parts.named("About", about),
                subject,
                Parts.row(
                        Parts.named(
                                "For",
                                Parts.choice("For whom", List.of(ReportKind.values()), ReportKind::words, form.kind())),
                        Parts.named(
                                "As", Parts.choice("Format", List.of(Format.values()), Format::words, form.format()))),
                Parts.paragraph(
                        "A client report says in plain words what was found, what it means and what it cannot say."
                                + " A workshop report holds every number with its uncertainty, the conditions and the settings."),
                make(),
                made);
        left.getStyleClass().add("pane");
        left.setPrefWidth(FORM_WIDTH);
        ScrollPane scroll = new ScrollPane(left);
        scroll.setFitToWidth(true);
        Region right = new ShopPane(shop).node();
        HBox.setHgrow(scroll, Priority.ALWAYS);
        HBox.setHgrow(right, Priority.ALWAYS);
        this.node = new HBox(scroll, right);
        form.about().addListener((InvalidationListener) o -> arrange());
        model.made().addListener((InvalidationListener) o -> listMade());
        arrange();
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
        about.requestFocus();
    }

    private static Offer<SittingChoice> sittings(
            String name, ObservableList<SittingChoice> choices, ObjectProperty<Optional<SittingChoice>> value) {
        return new Offer<>(name, "choose a sitting", choices, SittingChoice::words, value);
    }

    private void arrange() {
        subject.getChildren()
                .setAll(
                        switch (model.form().about().get()) {
                            case SITTING -> List.of(Parts.named("Sitting", sitting.node()));
                            case TWO ->
                                List.of(
                                        Parts.named("Sitting the report is about", sitting.node()),
                                        Parts.named("Set against the earlier sitting", against.node()),
                                        Parts.named("Your reason to compare in spite of the conditions", despite));
                            case HISTORY -> List.of(Parts.named("Instrument", instrument.node()));
                            case GROUPS ->
                                List.of(Parts.row(Parts.named("Groups by", by), Parts.named("Sittings", stage)));
                        });
    }

    private Button make() {
        Button make =
                Parts.button("_Make the report…", "Asks where to, makes the report and offers to open it", this::ask);
        make.getStyleClass().add("accent");
        return make;
    }

    private void ask() {
        if (!model.ready()) {
            return;
        }
        Format format = model.form().format().get();
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Where shall the report be written?");
        chooser.getExtensionFilters().setAll(new FileChooser.ExtensionFilter(format.words(), "*." + format.ending()));
        chooser.setInitialFileName(model.form().fileName());
        Optional.ofNullable(chooser.showSaveDialog(node.getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(model::make);
    }

    private void listMade() {
        List<Node> lines = new ArrayList<>();
        if (!model.made().isEmpty()) {
            lines.add(Parts.heading("Made today", "part-title"));
        }
        for (Path file : model.made()) {
            Label name = new Label(String.valueOf(file.getFileName()));
            Button show = Parts.button("Open", "Opens " + file, () -> open.accept(file));
            show.setAccessibleText("Open " + file.getFileName());
            lines.add(Parts.row(name, show));
        }
        made.getChildren().setAll(lines);
    }
}
