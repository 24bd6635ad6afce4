package io.github.tapwright.desktop.shelf;

import io.github.tapwright.sitting.Sitting;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ObservableStringValue;

/** Something written down that is being corrected. */
interface Correction {

    /**
     * What keeps it.
     *
     * @param words on the button
     * @param does what it does, as help
     * @param keys what keys do, below the form
     */
    record Keeping(String words, String does, String keys) {}

    /** What keeps what was typed. */
    default Keeping keeping() {
        return new Keeping(
                "_Keep the correction",
                "Writes it down so (Enter)",
                "Enter keeps, Escape leaves. What stands empty is unknown.");
    }

    /** A sitting in a heading, such as "sitting 3 of instrument 58, for taps". */
    static String name(Sitting sitting) {
        return "sitting " + sitting.id() + " of instrument " + sitting.instrument() + ", for "
                + sitting.latest().findings().procedure().key();
    }

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
    default ObservableStringValue changes() {
        return state().changes();
    }

    /** Why what was typed cannot be kept, and what to do about it; empty words if it can. */
    default ReadOnlyStringProperty refusal() {
        return state().refusal();
    }

    /** Keeps what was typed, or says why not. */
    void save();

    /** Closes the form and leaves everything as it was; what was typed can be brought back. */
    void leave();
}
