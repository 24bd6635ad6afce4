package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.StudiedResonance;
import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Shows how far setting up again moves figures and where that is known from; makes a study of sittings already kept. */
final class SpreadPane {

    private static final double WIDEST = 720;
    private static final double TABLE_HEIGHT = 182;

    private final SpreadModel model;
    private final Label words = Parts.paragraph("");
    private final Label trial = Parts.paragraph("");
    private final TableView<StudiedResonance> resonances = table();
    private final Label legend = Parts.heading(
            "Standard deviations: s r within one set-up, s L added by setting up again, s R both together.", "quiet");
    private final VBox node;

    SpreadPane(SpreadModel model) {
        this.model = model;
        ListView<SittingSummary> sittings = sittings();
        VBox.setVgrow(sittings, Priority.ALWAYS);
        this.node = new VBox(
                8,
                Parts.heading("Setting up again", "screen-title"),
                words,
                resonances,
                legend,
                Parts.heading("A study of sittings you have", "part-title"),
                Parts.paragraph("One guitar, one day, taken down and put up again for each. Space ticks a sitting."),
                Parts.row(
                        new Offer<>(
                                        "Instrument whose set-ups are studied",
                                        "choose an instrument",
                                        model.instruments(),
                                        ShopNumber::toString,
                                        model.instrument())
                                .node(),
                        tryOut(),
                        keep(),
                        forget()),
                sittings,
                trial);
        node.getStyleClass().add("pane");
        node.setMaxWidth(WIDEST);
        InvalidationListener changed = o -> show();
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
        Button button = Parts.button("Keep the _study", "From then on comparisons count with this study", model::keep);
        button.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.tried().get().flatMap(BenchStudy::spread).isEmpty(), model.tried()));
        return button;
    }

    private Button forget() {
        Button button = Parts.button(
                "_Forget the studies",
                "Forgets the studies kept, of taps, notes and plucks; no sitting is deleted, and it can be taken back",
                model::forget);
        button.disableProperty().bind(Bindings.createBooleanBinding(() -> !model.keepsOne(), model.held()));
        return button;
    }

    private ListView<SittingSummary> sittings() {
        ListView<SittingSummary> list = new ListView<>(model.sittings());
        list.setAccessibleText("Sittings to study");
        list.setPlaceholder(Parts.paragraph("The sittings of taps of the instrument you choose stand here."));
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

    private static TableView<StudiedResonance> table() {
        TableView<StudiedResonance> table = Parts.table(
                "Resonances of the study",
                "",
                Parts.column("Resonance", 112, false, r -> r.name().orElse("no name")),
                Parts.column(
                        "Mean (Hz)", 90, true, r -> Figures.text(r.frequencyHz().mean(), 2)),
                Parts.column(
                        "s r (Hz)", 78, true, r -> Figures.text(r.frequencyHz().withinSetUp(), 3)),
                Parts.column(
                        "s L (Hz)", 82, true, r -> Figures.text(r.frequencyHz().betweenSetUps(), 3)),
                Parts.column("Q", 46, true, r -> Figures.text(r.q().mean(), 1)),
                Parts.column("s R of Q", 82, true, r -> Figures.text(r.q().reproducibility(), 1)),
                Parts.column(
                        "s R (dB)",
                        84,
                        true,
                        r -> r.levelDb()
                                .map(l -> Figures.text(l.reproducibility(), 2))
                                .orElse("–")));
        table.setPrefHeight(TABLE_HEIGHT);
        table.setMinHeight(TABLE_HEIGHT);
        return table;
    }

    private void show() {
        words.setText(String.join("\n", model.sentences()));
        Optional<String> tried = model.trial();
        trial.setText(tried.orElse(""));
        show(trial, tried.isPresent());
        List<StudiedResonance> rows = model.tried()
                .get()
                .or(() -> model.held().get().flatMap(BenchSpread::study))
                .map(BenchStudy::resonances)
                .orElse(List.of());
        resonances.getItems().setAll(rows);
        show(resonances, !rows.isEmpty());
        show(legend, !rows.isEmpty());
    }

    private static void show(Region part, boolean shown) {
        part.setVisible(shown);
        part.setManaged(shown);
    }
}
