package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.InstrumentKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;

/** Asks for what a new instrument needs; all but the number may be left as it is. */
final class AddInstrumentForm {

    private final ShelfModel model;
    private final StringProperty shopNumber = new SimpleStringProperty("");
    private final StringProperty nickname = new SimpleStringProperty("");
    private final ObjectProperty<InstrumentKind> kind = new SimpleObjectProperty<>(InstrumentKind.CLASSICAL);
    private final ObjectProperty<Optional<ConstructionKind>> construction =
            new SimpleObjectProperty<>(Optional.empty());
    private final TextField number;
    private final TitledPane node;

    AddInstrumentForm(ShelfModel model) {
        this.model = model;
        number = Parts.field("Shop number", "such as 37", shopNumber);
        number.setPrefColumnCount(6);
        TextField nicknameField = Parts.field("Name in the shop", "may stay empty", nickname);
        nicknameField.setPrefColumnCount(9);
        number.setOnAction(e -> add());
        nicknameField.setOnAction(e -> add());
        FlowPane fields = new FlowPane(
                8,
                8,
                Parts.named("Shop number", number),
                Parts.named(
                        "Kind", Parts.choice("Kind", List.of(InstrumentKind.values()), InstrumentKind::words, kind)),
                Parts.named("Soundboard", constructionBox()),
                Parts.named("Name in the shop", nicknameField),
                Parts.button("_Add", "Puts the instrument on the shelf", this::add));
        fields.setRowValignment(javafx.geometry.VPos.BOTTOM);
        node = new TitledPane("Add an instrument (Ctrl+N)", fields);
        node.setExpanded(false);
        node.setAnimated(false);
    }

    private ComboBox<Optional<ConstructionKind>> constructionBox() {
        List<Optional<ConstructionKind>> choices = Stream.concat(
                        Stream.of(Optional.<ConstructionKind>empty()),
                        Stream.of(ConstructionKind.values()).map(Optional::of))
                .toList();
        return Parts.choice(
                "Construction of the soundboard",
                choices,
                c -> c.map(ConstructionKind::words).orElse("not said"),
                construction);
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
        model.add(shopNumber.get(), kind.get(), construction.get(), nickname.get(), () -> {
            shopNumber.set("");
            nickname.set("");
        });
    }
}
