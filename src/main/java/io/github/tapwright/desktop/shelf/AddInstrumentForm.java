package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.Parts;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;

/** Asks for what a new instrument needs; all but the number may be left as it is. */
final class AddInstrumentForm {

    private final ShelfModel model;
    private final InstrumentForm form = new InstrumentForm();
    private final StringProperty shopNumber = new SimpleStringProperty("");
    private final TextField number;
    private final TitledPane node;

    AddInstrumentForm(ShelfModel model) {
        this.model = model;
        InstrumentFields fields = new InstrumentFields(form);
        number = Parts.field("Shop number", "such as 37", shopNumber);
        number.setPrefColumnCount(6);
        TextField nickname = fields.field(InstrumentLine.NICKNAME);
        nickname.setPrefColumnCount(9);
        number.setOnAction(e -> add());
        nickname.setOnAction(e -> add());
        FlowPane asked = new FlowPane(
                8,
                8,
                Parts.named("Shop number", number),
                Parts.named("Kind", fields.kind()),
                Parts.named("Soundboard", fields.construction()),
                Parts.named(InstrumentLine.NICKNAME.asked(), nickname),
                Parts.button("_Add", "Puts the instrument on the shelf", this::add));
        asked.setRowValignment(javafx.geometry.VPos.BOTTOM);
        node = new TitledPane("Add an instrument (Ctrl+N)", asked);
        node.setExpanded(false);
        node.setAnimated(false);
    }

    Node node() {
        return node;
    }

    /** Opens the form and puts the cursor into it. */
    void open() {
        node.setExpanded(true);
        number.requestFocus();
    }

    private void add() {
        model.add(shopNumber.get(), form, () -> {
            shopNumber.set("");
            form.line(InstrumentLine.NICKNAME).set("");
        });
    }
}
