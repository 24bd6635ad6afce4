package io.github.tapwright.desktop.settings;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.note.run.Tuning;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Asks how the guitars are tuned, for the air the shop is held at, and how far setting up again moves figures; shows calibrations. */
public final class SettingsView {

    private static final double WIDTH = 530;

    private final SettingsModel model;
    private final StringProperty a4 = new SimpleStringProperty();
    private final StringProperty openStrings = new SimpleStringProperty();
    private final StringProperty frets = new SimpleStringProperty();
    private final StringProperty driest = new SimpleStringProperty();
    private final StringProperty dampest = new SimpleStringProperty();
    private final StringProperty spreadOfFrequency = new SimpleStringProperty();
    private final StringProperty spreadOfQ = new SimpleStringProperty();
    private final StringProperty spreadOfLevel = new SimpleStringProperty();
    private final TextField first = Parts.field("Tuning note A4 (Hz)", "440", a4);
    private final HBox node;

    /**
     * A view.
     *
     * @param model the settings in force
     * @param spread what the bench's study says
     * @param calibrations those of the archive
     */
    public SettingsView(SettingsModel model, SpreadModel spread, CalibrationsModel calibrations) {
        this.model = model;
        VBox form = new VBox(
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
                Parts.row(
                        Parts.named("Spread of frequency (%)", studied("Spread of frequency (%)", spreadOfFrequency)),
                        Parts.named("Spread of Q (%)", studied("Spread of Q (%)", spreadOfQ)),
                        Parts.named("Spread of level (dB)", studied("Spread of level (dB)", spreadOfLevel))),
                Parts.paragraph(
                        "Your own figures of how far setting up again moves others, as standard deviations. Left"
                                + " empty, the study kept counts, or cautious figures where there is none."),
                Parts.button("_Keep these", "Keeps tuning, window and spread for this archive", this::keep));
        form.getStyleClass().add("pane");
        form.setMinWidth(WIDTH);
        form.setMaxWidth(WIDTH);
        TabPane right = new TabPane(
                tab("Spreads and studies", new SpreadPane(spread).node()),
                tab("Calibrations", new CalibrationsPane(calibrations).node()));
        right.setAccessibleText("Spreads and calibrations");
        HBox.setHgrow(right, Priority.ALWAYS);
        this.node = new HBox(form, right);
        model.typed().addListener((o, before, after) -> show(after));
        show(model.typed().get());
    }

    private static TextField studied(String name, StringProperty value) {
        return Parts.field(name, "as studied", value);
    }

    private static Tab tab(String words, Node content) {
        Tab tab = new Tab(words, content);
        tab.setClosable(false);
        return tab;
    }

    private void keep() {
        model.take(new SettingsModel.Typed(
                a4.get(),
                openStrings.get(),
                frets.get(),
                driest.get(),
                dampest.get(),
                new SettingsModel.TypedSpread(spreadOfFrequency.get(), spreadOfQ.get(), spreadOfLevel.get())));
    }

    private void show(SettingsModel.Typed now) {
        a4.set(now.a4());
        openStrings.set(now.openStrings());
        frets.set(now.frets());
        driest.set(now.driest());
        dampest.set(now.dampest());
        spreadOfFrequency.set(now.spread().frequencyPercent());
        spreadOfQ.set(now.spread().qPercent());
        spreadOfLevel.set(now.spread().levelDb());
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
