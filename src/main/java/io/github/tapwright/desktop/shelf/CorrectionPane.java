package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.conditions.ConditionsPane;
import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** Shows a form that corrects something: what is known, to be typed over; below it what would change, and why not. */
final class CorrectionPane {

    private final BorderPane node = new BorderPane();
    private final Node first;

    private CorrectionPane(Correction correction, Node first) {
        this.first = first;
        Label title = Parts.heading("", "screen-title");
        title.textProperty().bind(correction.title());
        node.setTop(title);
        node.getStyleClass().add("pane");
        node.addEventFilter(KeyEvent.KEY_PRESSED, e -> press(e, correction));
    }

    /** A long form scrolls; what keeps it stays in sight below. */
    private static CorrectionPane scrolling(Correction correction, Node first, Node fields) {
        CorrectionPane pane = new CorrectionPane(correction, first);
        ScrollPane form = new ScrollPane(fields);
        form.setFitToWidth(true);
        form.setAccessibleText("What is written down");
        fields.getStyleClass().add("correction");
        pane.node.setCenter(form);
        pane.node.setBottom(foot(correction));
        return pane;
    }

    /** One question, and what keeps its answer right below. */
    private static CorrectionPane asking(Correction correction, Node first, Node question) {
        CorrectionPane pane = new CorrectionPane(correction, first);
        VBox asked = new VBox(question);
        asked.getStyleClass().add("correction");
        pane.node.setCenter(new VBox(8, asked, foot(correction)));
        return pane;
    }

    /** Enter keeps and Escape leaves, wherever in the form one is; notes and open choices have their own use for both. */
    private static void press(KeyEvent e, Correction correction) {
        boolean enter = e.getCode() == KeyCode.ENTER && !(e.getTarget() instanceof TextArea);
        boolean escape = e.getCode() == KeyCode.ESCAPE;
        boolean choosing = e.getTarget() instanceof ComboBox<?> box && box.isShowing();
        if (choosing || !(enter || escape)) {
            return;
        }
        e.consume();
        if (e.getTarget() instanceof Button button && enter) {
            button.fire();
        } else if (enter) {
            correction.save();
        } else {
            correction.leave();
        }
    }

    /** The form of an instrument. */
    static CorrectionPane of(CorrectInstrumentModel model) {
        InstrumentFields fields = new InstrumentFields(model.form());
        ComboBox<?> kind = fields.kind();
        return scrolling(model, kind, fields.correcting(kind));
    }

    /** The form of a sitting. */
    static CorrectionPane of(CorrectSittingModel model, SettingsModel settings) {
        TextField taken = Parts.field("Taken", "such as 2026-03-14 09:26", model.taken());
        ComboBox<HoleState> hole =
                Parts.choice("Soundhole", List.of(HoleState.values()), CorrectionPane::words, model.hole());
        hole.setMaxWidth(Double.MAX_VALUE);
        ComboBox<Optional<ShopNumber>> instrument = Parts.choice(
                "Instrument", model.instruments(), i -> i.map(ShopNumber::text).orElse(""), model.instrument());
        instrument.setMaxWidth(Double.MAX_VALUE);
        return scrolling(
                model,
                taken,
                ConditionsPane.correcting(
                        model.form(),
                        settings,
                        List.of(
                                Parts.named("Taken", taken),
                                Parts.named("Soundhole", hole),
                                Parts.named("Instrument", instrument))));
    }

    private static String words(HoleState hole) {
        return hole == HoleState.UNKNOWN ? "not said" : hole.name().toLowerCase(Locale.ROOT);
    }

    /** The form that asks why a sitting is set aside. */
    static CorrectionPane of(SetAsideModel model) {
        TextField reason = Parts.field("Reason", "such as the cover had slipped", model.reason());
        return asking(model, reason, Parts.named("What is wrong with it, in a few words", reason));
    }

    /** The form that asks what levels are measured by. */
    static CorrectionPane of(AnalyseAnewModel model) {
        ComboBox<LevelBasis> basis =
                Parts.choice("Levels measured by", model.bases(), LevelBasis::words, model.basis());
        return asking(model, basis, Parts.named("Levels measured by", basis));
    }

    Node node() {
        return node;
    }

    /** Puts the cursor into the first of the fields, which stand in the window only once they are dressed. */
    void focus() {
        node.applyCss();
        first.requestFocus();
    }

    private static Node foot(Correction correction) {
        Correction.Keeping keeping = correction.keeping();
        Button keep = Parts.button(keeping.words(), keeping.does(), correction::save);
        keep.getStyleClass().add("accent");
        Button leave = Parts.button("_Leave as it was", "Keeps nothing of what was typed (Escape)", correction::leave);
        Label keys = new Label(keeping.keys());
        keys.getStyleClass().add("quiet");
        VBox foot = new VBox(
                6,
                said(correction.refusal(), "bad"),
                said(correction.changes(), "plain"),
                Parts.row(keep, leave, keys));
        foot.getStyleClass().add("correction");
        return foot;
    }

    private static Node said(ObservableStringValue words, String style) {
        Label label = Parts.paragraph("");
        label.getStyleClass().add(style);
        label.textProperty().bind(words);
        label.visibleProperty().bind(Bindings.isNotEmpty(words));
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }
}
