package io.github.tapwright.desktop.sitting;

import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.statistics.Figures;
import java.time.LocalDate;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * The conditions as the maker types them.
 *
 * <p>What seldom changes is remembered from the instrument's last sitting. The air and an added mass are not: a
 * remembered humidity would be taken for a reading, so these are asked again each time.
 */
public final class ConditionsForm {

    final ObjectProperty<Optional<Stage>> stage = new SimpleObjectProperty<>(Optional.empty());
    final StringsForm strings = new StringsForm();
    final StringProperty temperature = new SimpleStringProperty("");
    final StringProperty humidity = new SimpleStringProperty("");
    final StringProperty rested = new SimpleStringProperty("");
    final StringProperty support = new SimpleStringProperty("");
    final StringProperty tool = new SimpleStringProperty("");
    final StringProperty place = new SimpleStringProperty("");
    final StringProperty microphone = new SimpleStringProperty("");
    final StringProperty distance = new SimpleStringProperty("");
    final StringProperty gain = new SimpleStringProperty("");
    final StringProperty mass = new SimpleStringProperty("");
    final StringProperty massPlace = new SimpleStringProperty("");
    final StringProperty operator = new SimpleStringProperty("");
    final StringProperty note = new SimpleStringProperty("");

    /** An empty form. */
    public ConditionsForm() {}

    /**
     * Remembers what seldom changes.
     *
     * @param last the conditions of the last sitting
     */
    public void remember(Conditions last) {
        stage.set(last.stage());
        strings.remember(last.strings());
        support.set(last.placing().support().orElse(""));
        tool.set(last.placing().strikeTool().orElse(""));
        place.set(last.placing().strikePlace().orElse(""));
        microphone.set(last.microphone().model().orElse(""));
        distance.set(last.microphone().distanceMm().map(Figures::plain).orElse(""));
        gain.set(last.microphone().gain().orElse(""));
        operator.set(last.operator().orElse(""));
        askAgain();
    }

    /** Empties what must be read anew for every sitting; the rest holds as it was kept. */
    public void askAgain() {
        strings.settle();
        temperature.set("");
        humidity.set("");
        rested.set("");
        mass.set("");
        massPlace.set("");
        note.set("");
    }

    /**
     * What was typed.
     *
     * @param hole the soundhole, as the plan asks
     * @param units of the temperature
     * @param today the day of the sitting
     * @return the conditions; what was left empty stays unknown
     * @throws io.github.tapwright.instrument.RefusedEntryException if something typed makes no sense
     */
    public Conditions read(HoleState hole, Units units, LocalDate today) {
        return new Conditions(
                stage.get(),
                new Air(
                        units.read(temperature.get()),
                        Units.figure("relative humidity", humidity.get()),
                        Units.figure("hours in this air", rested.get())),
                strings.read(today),
                hole,
                new Placing(text(support), text(tool), text(place)),
                new Microphone(text(microphone), Units.figure("distance", distance.get()), text(gain)),
                Units.figure("added mass", mass.get()).map(grams -> new AddedMass(grams, text(massPlace))),
                text(operator),
                text(note));
    }

    /** What was typed, without blanks around it; empty if nothing was. */
    static Optional<String> text(StringProperty typed) {
        return Optional.of(typed.get().strip()).filter(t -> !t.isEmpty());
    }
}
