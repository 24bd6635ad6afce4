package io.github.tapwright.desktop.response;

import io.github.tapwright.sitting.SittingSummary;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ListCell;

/** A sitting with a tick for whether it lies over. */
final class OverlayCell extends ListCell<SittingSummary> {

    private final ResponseModel model;
    private final CheckBox tick = new CheckBox();

    OverlayCell(ResponseModel model) {
        this.model = model;
        tick.setOnAction(e -> model.lay(getItem().id(), tick.isSelected()));
    }

    @Override
    protected void updateItem(SittingSummary sitting, boolean empty) {
        super.updateItem(sitting, empty);
        if (empty || sitting == null) {
            setGraphic(null);
            return;
        }
        boolean lookedAt =
                model.sitting().get().filter(s -> s.id().equals(sitting.id())).isPresent();
        tick.setText(model.title(sitting) + (lookedAt ? " (looked at)" : ""));
        tick.setAccessibleText("Lay over " + model.title(sitting));
        tick.setDisable(lookedAt);
        tick.setSelected(lookedAt || model.overlays().stream().anyMatch(o -> o.id().equals(sitting.id())));
        setGraphic(tick);
    }
}
