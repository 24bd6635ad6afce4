package io.github.tapwright.desktop.settings;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.statistics.Figures;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** Asks how the guitars are tuned and for the air the shop is held at. */
public final class SettingsView {

    private static final double WIDTH = 560;

    private final SettingsModel model;
    private final StringProperty a4 = new SimpleStringProperty();
    private final StringProperty openStrings = new SimpleStringProperty();
    private final StringProperty frets = new SimpleStringProperty();
    private final StringProperty driest = new SimpleStringProperty();
    private final StringProperty dampest = new SimpleStringProperty();
    private final TextField first = Parts.field("Tuning note A4 (Hz)", "440", a4);
    private final VBox node;

    /**
     * A view.
     *
     * @param model the settings in force
     */
    public SettingsView(SettingsModel model) {
        this.model = model;
        this.node = new VBox(
                12,
                Parts.heading("Your workshop", "screen-title"),
                Parts.row(
                        Parts.named("Tuning note A4 (Hz)", first),
                        Parts.named("Open strings", Parts.field("Open strings", Tuning.CLASSICAL_NOTES, openStrings)),
                        Parts.named("Frets", Parts.field("Frets", "19", frets))),
                Parts.paragraph(
                        "Note names count from the tuning note (ISO 16: 440 Hz). Runs of notes and plucks that are"
                                + " recorded from now on are read by this tuning, the open strings given from the lowest up:"
                                + " a guitar tuned otherwise would have its notes put on the wrong frets."),
                Parts.row(
                        Parts.named("Driest air (% RH)", Parts.field("Driest air (% RH)", "40", driest)),
                        Parts.named("Dampest air (% RH)", Parts.field("Dampest air (% RH)", "50", dampest))),
                Parts.paragraph("The window you hold your shop in. Comparisons, timelines and reports warn of sittings"
                        + " outside it: wood in other air is another instrument."),
                Parts.button(
                        "_Keep these",
                        "Keeps the tuning and the window for this archive",
                        () -> model.take(new SettingsModel.Typed(
                                a4.get(), openStrings.get(), frets.get(), driest.get(), dampest.get()))));
        node.getStyleClass().add("pane");
        node.setMaxWidth(WIDTH);
        model.now().addListener((o, before, after) -> show());
        show();
    }

    private void show() {
        DeskSettings now = model.now().get();
        a4.set(Figures.plain(now.a4Hz()));
        openStrings.set(now.openStrings());
        frets.set(Integer.toString(now.fretCount()));
        driest.set(Figures.plain(now.window().lowestPercent()));
        dampest.set(Figures.plain(now.window().highestPercent()));
    }

    /**
     * The view.
     *
     * @return to be put in a window
     */
    public Node node() {
        return node;
    }

    /** Puts the cursor where one begins. */
    public void focus() {
        first.requestFocus();
    }
}
