package io.github.tapwright.desktop.conditions;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * The strings as the maker types them.
 *
 * <p>The day they were put on stays with the set: another set asks for its own day, and strings that are off have
 * neither set nor day.
 */
public final class StringsForm {

    final ObjectProperty<Optional<StringState>> state = new SimpleObjectProperty<>(Optional.empty());
    final StringProperty setName = new SimpleStringProperty("");
    final StringProperty fittedOn = new SimpleStringProperty("");
    private Typed known = Typed.NOTHING;
    private Typed takenOff = Typed.NOTHING;

    StringsForm() {
        state.addListener((o, before, after) -> followState(before));
        setName.addListener((o, before, after) -> followSet());
    }

    /** Set and day, word for word. */
    private record Typed(String setName, String fittedOn) {
        static final Typed NOTHING = new Typed("", "");

        static Typed of(Strings strings) {
            return new Typed(
                    strings.setName().orElse(""),
                    strings.fittedOn().map(Object::toString).orElse(""));
        }
    }

    /**
     * What they do.
     *
     * @return empty for unknown; may be set
     */
    public ObjectProperty<Optional<StringState>> state() {
        return state;
    }

    /**
     * Maker and gauge of the set.
     *
     * @return empty for unknown; may be set
     */
    public StringProperty setName() {
        return setName;
    }

    /**
     * The day the set was put on.
     *
     * @return as 2026-03-14, empty for unknown; may be set
     */
    public StringProperty fittedOn() {
        return fittedOn;
    }

    /** Whether there are none on the guitar. */
    boolean areOff() {
        return isOff(state.get());
    }

    void remember(Strings last) {
        show(last);
        settle();
    }

    /** Shows what is to be corrected. A slip in the set's name makes no other set of it, so the day stays. */
    void fill(Strings kept) {
        show(kept);
        known = Typed.NOTHING;
        takenOff = Typed.NOTHING;
    }

    /** Remembers the last sitting's anew where it was corrected, unless other strings were typed meanwhile. */
    void follow(Strings remembered, Strings last) {
        boolean untouched = state.get().equals(remembered.state())
                && Typed.of(remembered).equals(new Typed(setName.get(), fittedOn.get()));
        if (untouched && !last.equals(remembered)) {
            remember(last);
        }
    }

    private void show(Strings strings) {
        state.set(strings.state());
        show(Typed.of(strings));
    }

    /** What stands here was kept: strings taken off until now are gone, and what changes from now on changes from this. */
    void settle() {
        known = new Typed(setName.get(), fittedOn.get());
        takenOff = Typed.NOTHING;
    }

    /** Whoever steps through the choices by arrow key passes "off" on the way; what was typed comes back behind it. */
    private void followState(Optional<StringState> before) {
        if (areOff()) {
            takenOff = new Typed(setName.get(), fittedOn.get());
            show(Typed.NOTHING);
        } else if (isOff(before)) {
            show(takenOff);
        }
    }

    /** Another set was put on another day; the known set's day comes back with its name. */
    private void followSet() {
        boolean isKnown = setName.get().strip().equals(known.setName().strip());
        if (isKnown && fittedOn.get().isBlank()) {
            fittedOn.set(known.fittedOn());
        } else if (!isKnown && fittedOn.get().equals(known.fittedOn())) {
            fittedOn.set("");
        }
    }

    private void show(Typed typed) {
        setName.set(typed.setName());
        fittedOn.set(typed.fittedOn());
    }

    /**
     * What was typed.
     *
     * @return the strings; what was left empty stays unknown
     * @throws RefusedEntryException if the day is none
     */
    Strings read() {
        return areOff()
                ? new Strings(state.get(), Optional.empty(), Optional.empty())
                : new Strings(
                        state.get(),
                        ConditionsForm.text(setName),
                        ConditionsForm.text(fittedOn).map(StringsForm::day));
    }

    private static LocalDate day(String typed) {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeParseException e) {
            throw new RefusedEntryException(
                    "strings fitted on: \"" + typed + "\" is no day; type one such as 2026-03-14");
        }
    }

    private static boolean isOff(Optional<StringState> state) {
        return state.equals(Optional.of(StringState.OFF));
    }
}
