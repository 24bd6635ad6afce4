package io.github.tapwright.desktop.settings;

import io.github.tapwright.desktop.part.Parts;
import java.util.Arrays;
import java.util.List;
import javafx.beans.property.Property;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;

/** Taps, notes or plucks: one of them is always chosen. */
final class KindChoice {

    private final HBox node;

    KindChoice(Property<StudyKind> kind) {
        ToggleGroup group = new ToggleGroup();
        List<ToggleButton> buttons = Arrays.stream(StudyKind.values())
                .map(each -> button(each, each == kind.getValue()))
                .toList();
        group.getToggles().setAll(buttons);
        buttons.forEach(button -> button.getStyleClass().add("center-pill"));
        shape(buttons.get(0), "left-pill");
        shape(buttons.get(buttons.size() - 1), "right-pill");
        group.selectedToggleProperty().addListener((o, before, after) -> {
            if (after != null) {
                kind.setValue((StudyKind) after.getUserData());
            }
        });
        this.node = Parts.row(buttons.toArray(Node[]::new));
        node.setSpacing(0);
    }

    private static ToggleButton button(StudyKind kind, boolean chosen) {
        ToggleButton button = new ToggleButton("_" + kind.words());
        button.setMnemonicParsing(true);
        button.setAccessibleText("Studies of " + kind.procedure());
        button.setUserData(kind);
        button.setSelected(chosen);
        // Alt with its letter brings the action alone, and a second press would leave none chosen.
        button.setOnAction(e -> button.setSelected(true));
        return button;
    }

    private static void shape(ToggleButton button, String style) {
        button.getStyleClass().remove("center-pill");
        button.getStyleClass().add(style);
    }

    Node node() {
        return node;
    }
}
