package io.github.tapwright.desktop.conditions;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.property.Property;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Shows the conditions: what is read anew for every sitting, and what seldom changes. */
public final class ConditionsPane {

    private static final int NOTE_LINES = 2;

    private final ConditionsForm form;
    private final GridPane readings = Parts.halves(8);
    private final GridPane setUp = Parts.halves(8);

    private ConditionsPane(ConditionsForm form, SettingsModel settings, String unread) {
        this.form = form;
        readings.add(temperature(settings, unread), 0, 0);
        readings.add(asked(TypedLine.HUMIDITY, unread), 1, 0);
        readings.add(asked(TypedLine.RESTED), 0, 1);
        readings.add(asked(TypedLine.MASS), 0, 2);
        readings.add(asked(TypedLine.MASS_PLACE), 1, 2);
        setUp.add(Parts.named("Stage", choice("Stage", Stage.values(), Stage::words, form.stage())), 0, 0);
        addStrings(setUp, form.strings());
        setUp.add(asked(TypedLine.SUPPORT), 0, 2);
        setUp.add(asked(TypedLine.TOOL), 1, 2);
        setUp.add(asked(TypedLine.PLACE), 0, 3);
        setUp.add(asked(TypedLine.MICROPHONE), 1, 3);
        setUp.add(asked(TypedLine.DISTANCE), 0, 4);
        setUp.add(asked(TypedLine.GAIN), 1, 4);
        setUp.add(asked(TypedLine.OPERATOR), 0, 5);
    }

    /**
     * Asks for the conditions of a new sitting.
     *
     * @param form what is typed
     * @param settings the unit of temperatures
     * @return to be put on a screen
     */
    public static Node asking(ConditionsForm form, SettingsModel settings) {
        ConditionsPane pane = new ConditionsPane(form, settings, "read it now");
        pane.readings.add(pane.asked(TypedLine.NOTE), 1, 1);
        return new VBox(
                8,
                Parts.heading("Read anew each time", "part-title"),
                pane.readings,
                Parts.heading("Remembered from last time", "part-title"),
                pane.setUp);
    }

    /**
     * Shows the conditions of a sitting that is kept, to correct them.
     *
     * @param form what is known, and what is typed
     * @param settings the unit of temperatures
     * @param besides what else can be corrected of it, side by side above the air
     * @return to be put on a screen
     */
    public static Region correcting(ConditionsForm form, SettingsModel settings, List<Node> besides) {
        ConditionsPane pane = new ConditionsPane(form, settings, "unknown");
        GridPane first = Parts.columns(besides.size(), 8);
        first.addRow(0, besides.toArray(Node[]::new));
        VBox left = new VBox(
                8,
                Parts.heading("When, of which guitar, in which air", "part-title"),
                first,
                pane.readings,
                Parts.named(TypedLine.NOTE.words(), pane.note()));
        VBox right = new VBox(8, Parts.heading("The guitar and the set-up", "part-title"), pane.setUp);
        GridPane both = Parts.halves(24);
        both.addRow(0, left, right);
        return both;
    }

    /** Notes may have several lines, which a field would join. */
    private TextArea note() {
        return Parts.notes(TypedLine.NOTE.words(), NOTE_LINES, form.line(TypedLine.NOTE));
    }

    private Node temperature(SettingsModel settings, String unread) {
        Label name = new Label();
        name.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> "Temperature (" + settings.units().sign() + ")", settings.now()));
        return Parts.named(name, field(TypedLine.TEMPERATURE.words(), unread, form.line(TypedLine.TEMPERATURE)));
    }

    private static void addStrings(GridPane grid, StringsForm strings) {
        Node state = choice("Strings", StringState.values(), StringState::words, strings.state());
        grid.add(Parts.named("Strings", state), 1, 0);
        TextField setName = field("String set", "maker and gauge", strings.setName());
        TextField fittedOn = field("Strings fitted on", "such as 2026-03-14", strings.fittedOn());
        List.of(setName, fittedOn)
                .forEach(field ->
                        field.disableProperty().bind(Bindings.createBooleanBinding(strings::areOff, strings.state())));
        grid.add(Parts.named("String set", setName), 0, 1);
        grid.add(Parts.named("Strings fitted on", fittedOn), 1, 1);
    }

    private Node asked(TypedLine line) {
        return asked(line, line.prompt());
    }

    private Node asked(TypedLine line, String prompt) {
        return Parts.named(line.words(), field(line.words(), prompt, form.line(line)));
    }

    private static TextField field(String name, String prompt, StringProperty value) {
        TextField field = Parts.field(name, prompt, value);
        field.setPrefColumnCount(11);
        return field;
    }

    private static <T> ComboBox<Optional<T>> choice(
            String name, T[] values, java.util.function.Function<T, String> words, Property<Optional<T>> value) {
        List<Optional<T>> choices = Stream.concat(
                        Stream.of(Optional.<T>empty()), Stream.of(values).map(Optional::of))
                .toList();
        ComboBox<Optional<T>> box =
                Parts.choice(name, choices, c -> c.map(words).orElse("not said"), value);
        box.setMaxWidth(Double.MAX_VALUE);
        return box;
    }
}
