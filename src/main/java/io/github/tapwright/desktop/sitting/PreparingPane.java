package io.github.tapwright.desktop.sitting;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.desktop.conditions.ConditionsPane;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.settings.DeskSettings;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.live.InputDevice;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The visit before the microphone opens: whose, what for, how to set up, which input; and what waits from before. */
final class PreparingPane {

    private final SittingModel model;
    private final SettingsModel settings;
    private final Button start;
    private final ComboBox<Optional<ShopNumber>> whose = new ComboBox<>();
    private final ComboBox<Optional<InputDevice>> input = new ComboBox<>();
    /** Made once: labels and boxes made anew at every look would never be let go by the boxes that stay. */
    private final List<Node> microphone;

    private final VBox guide = new VBox(10);

    PreparingPane(SittingModel model, SettingsModel settings, Button start) {
        this.model = model;
        this.settings = settings;
        this.start = start;
        start.getStyleClass().add("accent");
        whose.setAccessibleText("Instrument");
        whose.setConverter(Parts.shown(n -> n.map(ShopNumber::toString).orElse("choose one")));
        whose.valueProperty().bindBidirectional(model.instrument());
        input.setAccessibleText("Input");
        input.setConverter(Parts.shown(d -> d.map(InputDevice::name).orElse("the system's own choice")));
        input.setPrefWidth(240);
        input.valueProperty().bindBidirectional(model.device());
        this.microphone = microphone();
        InvalidationListener changed = o -> arrange();
        List.of(
                        model.instruments(),
                        model.devices(),
                        model.files(),
                        model.waiting().all(),
                        model.study().setUps())
                .forEach(list -> list.addListener(changed));
        model.plan().addListener(changed);
        settings.now().addListener(changed);
        arrange();
    }

    Node form() {
        ComboBox<Plan> purpose = Parts.choice("Purpose", List.of(Plan.values()), Plan::words, model.plan());
        // A recording is of one instrument and for one purpose from its first second on.
        List.of(whose, purpose)
                .forEach(box -> box.disableProperty().bind(model.step().isNotEqualTo(VisitStep.PREPARING)));
        VBox form = new VBox(
                8,
                Parts.row(Parts.named("Instrument", whose), Parts.named("For", purpose)),
                ConditionsPane.asking(model.form(), settings));
        form.getStyleClass().add("pane");
        return form;
    }

    Node guide() {
        return guide;
    }

    private void arrange() {
        offer(whose, model.instruments().stream().map(Optional::of).toList());
        offer(
                input,
                Stream.concat(
                                Stream.of(Optional.<InputDevice>empty()),
                                model.devices().stream().map(Optional::of))
                        .toList());
        List<Node> parts = new ArrayList<>();
        waiting().ifPresent(parts::add);
        parts.add(Parts.heading(model.plan().get().words(), "screen-title"));
        List<String> steps = model.plan().get().steps();
        for (int i = 0; i < steps.size(); i++) {
            parts.add(Parts.paragraph((i + 1) + ".  " + steps.get(i)));
        }
        readBy().ifPresent(parts::add);
        parts.addAll(model.files().isEmpty() ? microphone : files());
        study().ifPresent(parts::add);
        guide.getChildren().setAll(parts);
    }

    /** Whoever brings a guitar tuned otherwise must see it before playing, not after. */
    private Optional<Node> readBy() {
        DeskSettings desk = settings.now().get();
        return model.plan().get().isForTaps()
                ? Optional.empty()
                : Optional.of(
                        Parts.paragraph("Read as " + desk.openStrings() + ", " + desk.fretCount() + " frets, A4 at "
                                + Figures.plain(desk.a4Hz()) + " Hz; another tuning is set on the Workshop screen."));
    }

    /** A box forgets its choice when its list changes; the choice stays. */
    private static <T> void offer(ComboBox<Optional<T>> box, List<Optional<T>> choices) {
        if (!box.getItems().equals(choices)) {
            Optional<T> chosen = box.getValue();
            box.getItems().setAll(choices);
            box.setValue(chosen);
        }
    }

    private List<Node> microphone() {
        return List.of(
                Parts.row(
                        Parts.named("Input", input),
                        Parts.named(
                                "Read as", Parts.choice("Format", LiveFormat.all(), LiveFormat::text, model.format()))),
                Parts.row(
                        start,
                        Parts.button(
                                "_Look for inputs",
                                "Lists the inputs again, after one was plugged in",
                                model::refreshDevices)));
    }

    private List<Node> files() {
        List<Node> parts = new ArrayList<>();
        parts.add(Parts.heading("Recordings made elsewhere", "part-title"));
        model.files().forEach(f -> parts.add(new Label(f.toString())));
        Button keep = Parts.button("_Keep them", "Copies them into the archive and analyses them", model::keepFiles);
        keep.getStyleClass().add("accent");
        parts.add(Parts.row(
                keep,
                Parts.button(
                        "_Rather record",
                        "Forgets these files",
                        () -> model.files().clear())));
        return parts;
    }

    private Optional<Node> study() {
        if (model.plan().get() != Plan.REPEATABILITY || model.study().setUps().isEmpty()) {
            return Optional.empty();
        }
        Button keep = Parts.button(
                "Keep the _study", "From then on comparisons use the spread of these set-ups", model.study()::keep);
        keep.setDisable(model.study().setUps().size() < BenchStudy.FEWEST);
        return Optional.of(Parts.row(
                new Label(model.study().setUps().size() + " set-ups kept, " + BenchStudy.FEWEST + " are the fewest"),
                keep));
    }

    private Optional<Node> waiting() {
        if (model.waiting().all().isEmpty()) {
            return Optional.empty();
        }
        VBox box = new VBox(6, Parts.heading("Recordings that wait to be kept", "part-title"));
        model.waiting().all().forEach(left -> box.getChildren().add(waiting(left)));
        box.getStyleClass().add("caution");
        return Optional.of(box);
    }

    private Node waiting(LeftCapture left) {
        String words = "Instrument " + left.notes().instrument() + ", " + Figures.text(left.seconds(), 1) + " s for "
                + left.notes().procedure().key() + (left.finished() ? "" : ", broken off");
        return Parts.row(
                new Label(words),
                Parts.spring(),
                Parts.button(
                        "Keep it", "Makes a sitting of it, with what was written down then", () -> model.recover(left)),
                Parts.button(
                        "Put it aside",
                        "Makes no sitting of it; the file stays",
                        () -> model.waiting().setAside(left.id())));
    }
}
