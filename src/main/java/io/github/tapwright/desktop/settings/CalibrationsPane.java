package io.github.tapwright.desktop.settings;

import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Shows the calibrations, and below them what is to be put right about the chosen one. */
final class CalibrationsPane {

    private static final double LEAST_TABLE = 120;

    private final CalibrationsModel model;
    private final TableView<CalibrationRow> table;
    private final Label consequence = Parts.paragraph("");
    private final TextField reason;
    private final Button useAgain;
    private final VBox withdrawing;
    private final VBox instead;
    private final VBox node;

    CalibrationsPane(CalibrationsModel model) {
        this.model = model;
        this.table = table();
        this.reason = Parts.field("What is wrong with it", "such as 114 was typed", model.reason());
        reason.setOnAction(e -> model.withdraw());
        HBox.setHgrow(reason, Priority.ALWAYS);
        this.useAgain = Parts.button("_Use this again", "Takes the calibration back into use", model::useAgain);
        this.withdrawing = withdrawing();
        this.instead = instead();
        this.node = new VBox(
                8,
                Parts.paragraph(
                        "Each holds for its microphone, input and gain alone. One that was wrong is withdrawn: it stays here"
                                + " with its tone and the reason, and nothing new uses it."),
                table,
                consequence,
                withdrawing,
                useAgain,
                instead);
        node.getStyleClass().add("pane");
        VBox.setVgrow(table, Priority.ALWAYS);
        model.chosen().addListener((o, before, after) -> show());
        model.rows().addListener((ListChangeListener<CalibrationRow>) change -> show());
        show();
    }

    Region node() {
        return node;
    }

    private VBox withdrawing() {
        Button withdraw =
                Parts.button("With_draw", "Withdraws the calibration for this reason (Enter)", model::withdraw);
        Region named = Parts.named("What is wrong with it, in a few words", Parts.row(reason, withdraw));
        return new VBox(named);
    }

    private VBox instead() {
        Offer<LevelBasis> basis =
                new Offer<>("Levels measured by", "choose", model.bases(), LevelBasis::words, model.basis());
        HBox.setHgrow(basis.node(), Priority.ALWAYS);
        return Parts.named(
                "Levels measured by",
                Parts.row(
                        basis.node(),
                        Parts.button(
                                "_Analyse them anew",
                                "Measures the levels of the sittings that rest on it anew; earlier results stay",
                                model::analyseAnew)));
    }

    private TableView<CalibrationRow> table() {
        TableView<CalibrationRow> rows = Parts.table(
                "Calibrations of the archive",
                "No calibrations yet. The command calibration add keeps the recorded tone of a calibrator.",
                Parts.column("No.", 42, true, row -> row.kept().id().toString()),
                Parts.column("Taken", 126, false, row -> row.kept().takenAt().text(model.zone())),
                Parts.column(
                        "Tone (dB)",
                        80,
                        true,
                        row -> Figures.plain(row.kept().calibration().tone().levelDb())),
                Parts.column("Microphone, gain", 160, false, CalibrationRow::input),
                Parts.column("State", 160, false, CalibrationRow::state));
        rows.setItems(model.rows());
        rows.setMinHeight(LEAST_TABLE);
        rows.getSelectionModel().selectedItemProperty().addListener((o, before, after) -> {
            if (after != null) {
                model.chosen().set(Optional.of(after));
            }
        });
        return rows;
    }

    private void show() {
        Optional<CalibrationRow> row = model.chosen().get();
        boolean here = reason.isFocused() || useAgain.isFocused();
        row.filter(model.rows()::contains).ifPresent(table.getSelectionModel()::select);
        consequence.setText(row.map(CalibrationRow::consequence).orElse(""));
        Parts.show(withdrawing, row.filter(r -> !r.isWithdrawn()).isPresent());
        Parts.show(useAgain, row.filter(CalibrationRow::isWithdrawn).isPresent());
        Parts.show(instead, !model.bases().isEmpty());
        if (here) {
            (useAgain.isVisible() ? useAgain : reason).requestFocus();
        }
    }
}
