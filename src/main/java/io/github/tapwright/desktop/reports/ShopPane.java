package io.github.tapwright.desktop.reports;

import io.github.tapwright.desktop.part.Parts;
import java.io.File;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** The shop's own name, address and picture. */
final class ShopPane {

    private static final double WIDTH = 420;
    private static final int LINES = 5;

    private final ShopModel model;
    private final VBox node;

    ShopPane(ShopModel model) {
        this.model = model;
        TextArea address = Parts.notes("The shop's address", LINES, model.address());
        address.setPromptText("one line each");
        Label picture = new Label();
        picture.textProperty().bind(model.picture());
        this.node = new VBox(
                12,
                Parts.heading("Your shop on reports", "screen-title"),
                Parts.named("Name", Parts.field("The shop's name", "as it shall stand on reports", model.name())),
                Parts.named("Address", address),
                Parts.button("_Keep name and address", "Reports made from now on bear them", model::keep),
                Parts.named("Picture", picture),
                Parts.row(
                        Parts.button("_Choose a picture…", "A PNG, JPEG or SVG file; a copy is kept", this::choose),
                        Parts.button("_No picture", "Reports bear no picture from now on", model::withoutPicture)),
                Parts.paragraph("What a report already bears stays as it is; these hold for the next one."));
        node.getStyleClass().add("pane");
        node.setPrefWidth(WIDTH);
    }

    Region node() {
        return node;
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("The shop's picture");
        chooser.getExtensionFilters()
                .setAll(new FileChooser.ExtensionFilter("PNG, JPEG, SVG", "*.png", "*.jpg", "*.jpeg", "*.svg"));
        Optional.ofNullable(chooser.showOpenDialog(node.getScene().getWindow()))
                .map(File::toPath)
                .ifPresent(model::usePicture);
    }
}
