package io.github.tapwright.desktop.shelf;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ObservableStringValue;

/** Something written down that is being corrected. */
interface Correction {

    /** Whether its form is open. */
    ReadOnlyBooleanProperty open();

    /** What is corrected, as a heading. */
    ReadOnlyStringProperty title();

    /** What would change if it were kept now; empty words if what was typed makes no sense yet. */
    ObservableStringValue changes();

    /** Why what was typed cannot be kept, and what to do about it; empty words if it can. */
    ReadOnlyStringProperty refusal();

    /** Keeps what was typed, or says why not. */
    void save();

    /** Closes the form and leaves everything as it was; what was typed can be brought back. */
    void leave();
}
