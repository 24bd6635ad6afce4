package io.github.tapwright.desktop.sitting;

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
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** Asks for the conditions: first what must be read anew, then what was remembered. */
final class ConditionsPane {

    private final VBox node;

    ConditionsPane(ConditionsForm form, SettingsModel settings) {
        GridPane now = grid();
        TextField temperature = field("Temperature", "read it now", form.temperature);
        VBox named = Parts.named("Temperature (" + settings.units().sign() + ")", temperature);
        settings.now()
                .addListener((o, before, after) -> ((javafx.scene.control.Label)
                                named.getChildren().get(0))
                        .setText("Temperature (" + after.units().sign() + ")"));
        now.add(named, 0, 0);
        now.add(asked("Relative humidity (%)", "read it now", form.humidity), 1, 0);
        now.add(asked("Hours in this air", "such as 24", form.rested), 0, 1);
        now.add(asked("Remark", "", form.note), 1, 1);
        now.add(asked("Added mass (g)", "none", form.mass), 0, 2);
        now.add(asked("Where it sits", "such as bridge centre", form.massPlace), 1, 2);
        GridPane remembered = grid();
        remembered.add(Parts.named("Stage", choice("Stage", Stage.values(), Stage::words, form.stage)), 0, 0);
        addStrings(remembered, form.strings);
        remembered.add(asked("Support", "such as foam at both ends", form.support), 0, 2);
        remembered.add(asked("Struck with", "such as knuckle", form.tool), 1, 2);
        remembered.add(asked("Struck where", "such as bridge centre", form.place), 0, 3);
        remembered.add(asked("Microphone", "model", form.microphone), 1, 3);
        remembered.add(asked("Distance (mm)", "from the top", form.distance), 0, 4);
        remembered.add(asked("Gain", "as you read it", form.gain), 1, 4);
        remembered.add(asked("Who strikes", "", form.operator), 0, 5);
        node = new VBox(
                8,
                Parts.heading("Read anew each time", "part-title"),
                now,
                Parts.heading("Remembered from last time", "part-title"),
                remembered);
    }

    Node node() {
        return node;
    }

    private static void addStrings(GridPane grid, StringsForm strings) {
        Node state = choice("Strings", StringState.values(), StringState::words, strings.state);
        grid.add(Parts.named("Strings", state), 1, 0);
        TextField setName = field("String set", "maker and gauge", strings.setName);
        TextField fittedOn = field("Strings fitted on", "such as 2026-03-14", strings.fittedOn);
        List.of(setName, fittedOn)
                .forEach(field ->
                        field.disableProperty().bind(Bindings.createBooleanBinding(strings::areOff, strings.state)));
        grid.add(Parts.named("String set", setName), 0, 1);
        grid.add(Parts.named("Strings fitted on", fittedOn), 1, 1);
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(6);
        ColumnConstraints half = new ColumnConstraints();
        half.setPercentWidth(50);
        grid.getColumnConstraints().setAll(half, half);
        return grid;
    }

    private static Node asked(String name, String prompt, StringProperty value) {
        return Parts.named(name, field(name, prompt, value));
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
