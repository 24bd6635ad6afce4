package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.ScreenWays;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingSummary;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Shows how far setting up or playing again moves figures and where that is known from; makes studies of sittings already kept. */
final class SpreadPane {

    private static final double WIDEST = 720;
    private static final double LEAST_LIST = 64;

    private final SpreadModel model;
    private final Label words = Parts.paragraph("");
    private final Label task = Parts.paragraph("");
    private final Label result = Parts.paragraph("");
    private final ListView<SittingSummary> sittings;
    private final StudyTables tables = new StudyTables();
    private final VBox node;

    SpreadPane(SpreadModel model) {
        this.model = model;
        this.sittings = sittings();
        sittings.setMinHeight(LEAST_LIST);
        VBox.setVgrow(sittings, Priority.ALWAYS);
        this.node = new VBox(
                8,
                Parts.row(
                        Parts.heading("Setting up, playing again", "screen-title"),
                        Parts.spring(),
                        new KindChoice(model.kind()).node()),
                words,
                Parts.heading("A study of sittings you have", "part-title"),
                task,
                Parts.row(
                        new Offer<>(
                                        "Instrument whose sittings are studied",
                                        "choose an instrument",
                                        model.instruments(),
                                        ShopNumber::toString,
                                        model.instrument())
                                .node(),
                        tryOut(),
                        keep(),
                        forget()),
                sittings,
                result,
                tables.node());
        node.getStyleClass().add("pane");
        node.setMaxWidth(WIDEST);
        InvalidationListener changed = o -> show();
        model.kind().addListener(changed);
        model.held().addListener(changed);
        model.tried().addListener(changed);
        show();
    }

    Region node() {
        return node;
    }

    private Button tryOut() {
        Button button = Parts.button(
                "_Work it out", "Says what a study of the ticked sittings would give; keeps nothing", model::tryOut);
        button.disableProperty()
                .bind(Bindings.createBooleanBinding(() -> model.ticked().size() < BenchStudy.FEWEST, model.ticked()));
        return button;
    }

    private Button keep() {
        Button button =
                Parts.button("Keep the _study", "From then on comparisons of its kind count with this study", () -> {
                    // Once it is kept there is nothing more to keep; the cursor should not land on Forget.
                    sittings.requestFocus();
                    model.keep();
                });
        button.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.tried().get().filter(Study::tells).isEmpty(), model.tried()));
        return button;
    }

    private Button forget() {
        Button button = Parts.button(
                "_Forget the study",
                "Forgets the study kept of this kind; no sitting is deleted, and it can be taken back",
                model::forget);
        button.disableProperty()
                .bind(Bindings.createBooleanBinding(() -> !model.keepsOne(), model.held(), model.kind()));
        return button;
    }

    private ListView<SittingSummary> sittings() {
        ListView<SittingSummary> list = new ListView<>(model.sittings());
        list.setAccessibleText("Sittings to study");
        Label nothing = Parts.paragraph("");
        nothing.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> "The sittings of " + model.kind().get().procedure()
                                + " of the instrument you choose stand here.",
                        model.kind()));
        list.setPlaceholder(nothing);
        list.setCellFactory(view -> new SetUpCell(model));
        list.setOnKeyPressed(e -> {
            SittingSummary at = list.getFocusModel().getFocusedItem();
            if (e.getCode() == KeyCode.SPACE && at != null) {
                model.toggle(at.id());
            }
        });
        model.ticked().addListener((InvalidationListener) o -> list.refresh());
        return list;
    }

    private void show() {
        words.setText(ScreenWays.in(String.join("\n", model.sentences())));
        task.setText(model.kind().get().task() + " Space ticks a sitting.");
        Optional<Study> shown = model.shown();
        result.setText(
                model.tried().get().isPresent() ? ScreenWays.in(String.join("\n", model.trial())) : "The study kept:");
        Parts.show(result, shown.isPresent());
        tables.show(shown);
    }
}
