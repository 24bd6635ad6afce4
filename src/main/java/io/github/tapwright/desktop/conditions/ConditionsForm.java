package io.github.tapwright.desktop.conditions;

import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.PossibleDates;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * The conditions as the maker types them.
 *
 * <p>For a new sitting, what seldom changes is remembered from the instrument's last one. The air and an added mass are
 * not: a remembered humidity would be taken for a reading, so these are asked again each time.
 */
public final class ConditionsForm {

    private final ObjectProperty<Optional<Stage>> stage = new SimpleObjectProperty<>(Optional.empty());
    private final StringsForm strings = new StringsForm();
    private final Map<TypedLine, StringProperty> lines = new EnumMap<>(TypedLine.class);

    /** An empty form. */
    public ConditionsForm() {
        Stream.of(TypedLine.values()).forEach(line -> lines.put(line, new SimpleStringProperty("")));
    }

    /**
     * How far the instrument has come.
     *
     * @return empty for unknown; may be set
     */
    public ObjectProperty<Optional<Stage>> stage() {
        return stage;
    }

    /**
     * The strings.
     *
     * @return their part of the form
     */
    public StringsForm strings() {
        return strings;
    }

    /**
     * A line one types on.
     *
     * @param which of them
     * @return what stands there; may be set
     */
    public StringProperty line(TypedLine which) {
        return Objects.requireNonNull(lines.get(which));
    }

    /**
     * All that can be typed or chosen.
     *
     * @return each part of the form
     */
    public Stream<Observable> all() {
        return Stream.concat(
                Stream.of(stage, strings.state(), strings.setName(), strings.fittedOn()), lines.values().stream());
    }

    /**
     * Remembers what seldom changes, for a new sitting.
     *
     * @param last the conditions of the last sitting
     */
    public void remember(Conditions last) {
        stage.set(last.stage());
        strings.remember(last.strings());
        write(last, Units.CELSIUS);
        askAgain();
    }

    /** Empties what must be read anew for every sitting; the rest holds as it was kept. */
    public void askAgain() {
        strings.settle();
        Stream.of(TypedLine.values())
                .filter(TypedLine::isReadAnew)
                .forEach(line -> line(line).set(""));
    }

    /**
     * Follows the last sitting where it was corrected since it was remembered; what was typed otherwise stays.
     *
     * @param remembered its conditions as they were remembered
     * @param last its conditions as they are kept now
     */
    public void follow(Conditions remembered, Conditions last) {
        if (stage.get().equals(remembered.stage())) {
            stage.set(last.stage());
        }
        strings.follow(remembered.strings(), last.strings());
        Stream.of(TypedLine.values())
                .filter(line -> !line.isReadAnew() && line(line).get().equals(line.text(remembered, Units.CELSIUS)))
                .forEach(line -> line(line).set(line.text(last, Units.CELSIUS)));
    }

    /**
     * Shows all that is known of a sitting, to correct it; what is unknown stands empty.
     *
     * @param kept its conditions
     * @param units of the temperature
     */
    public void fill(Conditions kept, Units units) {
        stage.set(kept.stage());
        strings.fill(kept.strings());
        write(kept, units);
    }

    private void write(Conditions known, Units units) {
        Stream.of(TypedLine.values()).forEach(line -> line(line).set(line.text(known, units)));
    }

    /**
     * Shows the temperature in another unit, unless another one was typed meanwhile.
     *
     * @param kept the conditions the form was filled with
     * @param before the unit they are shown in
     * @param after the unit wanted
     */
    public void fillTemperature(Conditions kept, Units before, Units after) {
        StringProperty typed = line(TypedLine.TEMPERATURE);
        if (typed.get().equals(TypedLine.TEMPERATURE.text(kept, before))) {
            typed.set(TypedLine.TEMPERATURE.text(kept, after));
        }
    }

    /**
     * What was typed for a new sitting.
     *
     * @param hole the soundhole, as the plan asks
     * @param units of the temperature
     * @param today the day of the sitting
     * @return the conditions; what was left empty stays unknown
     * @throws RefusedEntryException if something typed makes no sense
     */
    public Conditions read(HoleState hole, Units units, LocalDate today) {
        Conditions typed = read(hole, units.read(line(TypedLine.TEMPERATURE).get()));
        PossibleDates.refuseLaterStrings(today, typed.strings());
        return typed;
    }

    /**
     * What was typed to correct a sitting, whenever that was.
     *
     * @param kept the conditions the form was filled with; a temperature left as it was shown is theirs, not rounded
     * @param hole the soundhole
     * @param units of the temperature
     * @return the conditions; what was emptied is unknown
     * @throws RefusedEntryException if something typed makes no sense
     */
    public Conditions correct(Conditions kept, HoleState hole, Units units) {
        String typed = line(TypedLine.TEMPERATURE).get();
        boolean untouched = typed.equals(TypedLine.TEMPERATURE.text(kept, units));
        return read(hole, untouched ? kept.air().temperatureCelsius() : units.read(typed));
    }

    private Conditions read(HoleState hole, Optional<Double> temperatureCelsius) {
        return new Conditions(
                stage.get(),
                new Air(
                        temperatureCelsius,
                        figure("relative humidity", TypedLine.HUMIDITY),
                        figure("hours in this air", TypedLine.RESTED)),
                strings.read(),
                hole,
                new Placing(text(TypedLine.SUPPORT), text(TypedLine.TOOL), text(TypedLine.PLACE)),
                new Microphone(
                        text(TypedLine.MICROPHONE), figure("distance", TypedLine.DISTANCE), text(TypedLine.GAIN)),
                mass(),
                text(TypedLine.OPERATOR),
                text(TypedLine.NOTE));
    }

    private Optional<AddedMass> mass() {
        Optional<Double> grams = figure("added mass", TypedLine.MASS).filter(g -> g != 0);
        Optional<String> place = text(TypedLine.MASS_PLACE);
        if (grams.isEmpty() && place.isPresent()) {
            throw new RefusedEntryException("added mass: it sits at \"" + place.get()
                    + "\", but its grams are missing; type them, or empty both");
        }
        return grams.map(g -> new AddedMass(g, place));
    }

    private Optional<Double> figure(String what, TypedLine line) {
        return Units.figure(what, line(line).get());
    }

    private Optional<String> text(TypedLine line) {
        return text(line(line));
    }

    /** What was typed, without blanks around it; empty if nothing was. */
    static Optional<String> text(StringProperty typed) {
        return Optional.of(typed.get().strip()).filter(t -> !t.isEmpty());
    }
}
