package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.Parts;
import java.io.File;
import java.time.ZoneId;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.VBox;

/** One instrument: number, nature, last sitting, sketch. Takes files dropped on it. */
final class InstrumentCell extends ListCell<ShelfRow> {

    private final ZoneId zone;

    InstrumentCell(ZoneId zone, ShelfView.Ways ways) {
        this.zone = zone;
        setOnDragOver(e -> {
            if (e.getDragboard().hasFiles() && getItem() != null) {
                e.acceptTransferModes(TransferMode.COPY);
                e.consume();
            }
        });
        setOnDragDropped(e -> {
            ShelfRow row = getItem();
            if (row != null && e.getDragboard().hasFiles()) {
                ways.begin(
                        row.instrument().shopNumber(),
                        e.getDragboard().getFiles().stream().map(File::toPath).toList());
                e.setDropCompleted(true);
                e.consume();
            }
        });
    }

    @Override
    protected void updateItem(ShelfRow row, boolean empty) {
        super.updateItem(row, empty);
        setText(null);
        if (empty || row == null) {
            setGraphic(null);
            setAccessibleText(null);
            return;
        }
        Label number = Parts.heading(
                row.instrument().shopNumber()
                        + row.instrument().nickname().map(n -> " “" + n + "”").orElse(""),
                "shelf-number");
        Label last = new Label(row.lastSitting(zone));
        last.getStyleClass().add("quiet");
        VBox words = new VBox(1, number, new Label(row.nature()), last);
        setGraphic(Parts.row(words, Parts.spring(), new Sketch(row.sketch())));
        setAccessibleText("Instrument " + row.instrument().shopNumber() + ", " + row.nature() + ", last sitting "
                + row.lastSitting(zone));
    }
}
