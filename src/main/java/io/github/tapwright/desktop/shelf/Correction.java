package io.github.tapwright.desktop.shelf;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ObservableStringValue;

/** Something written down that is being corrected. */
interface Correction {

    /** Its form. */
    OpenForm state();

    /** Whether its form is open. */
    default ReadOnlyBooleanProperty open() {
        return state().open();
    }

    /** What is corrected, as a heading. */
    default ReadOnlyStringProperty title() {
        return state().title();
    }

    /** What would change if it were kept now; empty words if what was typed makes no sense yet. */
    ObservableStringValue changes();

    /** Why what was typed cannot be kept, and what to do about it; empty words if it can. */
    default ReadOnlyStringProperty refusal() {
        return state().refusal();
    }

    /** Keeps what was typed, or says why not. */
    void save();

    /** Closes the form and leaves everything as it was; what was typed can be brought back. */
    void leave();
}
