package io.github.tapwright.desktop.part;

import java.util.Optional;
import java.util.function.Function;
import javafx.beans.InvalidationListener;
import javafx.beans.property.Property;
import javafx.collections.ObservableList;
import javafx.scene.control.ComboBox;

/**
 * A choice among things that come and go, where nothing may be chosen yet; what was chosen stays chosen when the list is
 * made anew.
 *
 * @param <T> what is chosen
 */
public final class Offer<T> {

    private final ComboBox<T> box = new ComboBox<>();
    private final ObservableList<T> choices;
    private final Property<Optional<T>> value;
    private boolean arranging;

    /**
     * A choice bound to a model.
     *
     * @param name what is asked, for screen readers
     * @param prompt shown while nothing is chosen
     * @param choices what there is
     * @param words how one reads
     * @param value the model's
     */
    public Offer(
            String name,
            String prompt,
            ObservableList<T> choices,
            Function<T, String> words,
            Property<Optional<T>> value) {
        this.choices = choices;
        this.value = value;
        box.setAccessibleText(name);
        box.setPromptText(prompt);
        box.setConverter(Parts.shown(words));
        box.setMaxWidth(Double.MAX_VALUE);
        box.valueProperty().addListener((o, before, after) -> {
            if (!arranging) {
                value.setValue(Optional.ofNullable(after));
            }
        });
        choices.addListener((InvalidationListener) o -> arrange());
        value.addListener((o, before, after) -> follow());
        arrange();
    }

    /**
     * The control.
     *
     * @return to be put on a screen
     */
    public ComboBox<T> node() {
        return box;
    }

    private void arrange() {
        arranging = true;
        if (!box.getItems().equals(choices)) {
            box.getItems().setAll(choices);
        }
        follow();
        arranging = false;
    }

    private void follow() {
        boolean already = arranging;
        arranging = true;
        value.getValue()
                .ifPresentOrElse(box::setValue, () -> box.getSelectionModel().clearSelection());
        arranging = already;
    }
}
