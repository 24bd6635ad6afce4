package io.github.tapwright.desktop.settings;

import io.github.tapwright.sitting.SittingSummary;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ListCell;

/** A sitting with a tick for whether it is studied. */
final class SetUpCell extends ListCell<SittingSummary> {

    private final SpreadModel model;
    private final CheckBox tick = new CheckBox();

    SetUpCell(SpreadModel model) {
        this.model = model;
        // Keys go to the list, where arrows choose a line and Space ticks it.
        tick.setFocusTraversable(false);
        tick.setOnAction(e -> model.toggle(getItem().id()));
    }

    @Override
    protected void updateItem(SittingSummary sitting, boolean empty) {
        super.updateItem(sitting, empty);
        if (empty || sitting == null) {
            setGraphic(null);
            return;
        }
        tick.setText(model.title(sitting));
        tick.setAccessibleText("Study " + model.title(sitting));
        tick.setSelected(model.ticked().contains(sitting.id()));
        setGraphic(tick);
    }
}
