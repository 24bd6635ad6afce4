package io.github.tapwright.desktop.response;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.PictureChooser;
import io.github.tapwright.desktop.part.SetAsideButton;
import io.github.tapwright.desktop.plot.CurvePane;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.Strike;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.collections.FXCollections;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Shows response curves above, and below them resonances, strikes and what may be laid over. */
public final class ResponseView {

    /** Where the screen leads to put a sitting right. */
    public interface Ways {

        /**
         * Corrects what is written down about a sitting.
         *
         * @param sitting which
         */
        void correct(SittingId sitting);

        /**
         * Asks why a sitting is set aside.
         *
         * @param sitting which
         */
        void setAside(SittingId sitting);

        /**
         * Takes a sitting that was set aside back into use.
         *
         * @param sitting which
         */
        void useAgain(SittingId sitting);
    }

    private final ResponseModel model;
    private final Ways ways;
    private final SetAsideButton setAside;
    private final CurvePane curves;
    private final Label title = Parts.heading("Response", "screen-title");
    private final Label remark = Parts.paragraph("");
    private final TableView<ShownResonance> resonances;
    private final TableView<Strike> strikes;
    private final ComboBox<String> name = new ComboBox<>();
    private final BorderPane node = new BorderPane();

    /**
     * A view.
     *
     * @param model what is looked at
     * @param settings light and tuning note
     * @param ways where it leads
     */
    public ResponseView(ResponseModel model, SettingsModel settings, Ways ways) {
        this.model = model;
        this.ways = ways;
        this.setAside = new SetAsideButton(() -> ofSitting(ways::setAside), () -> ofSitting(ways::useAgain));
        this.curves = new CurvePane(settings.light(), settings.a4Hz());
        this.resonances = resonanceTable();
        this.strikes = strikeTable(model);
        SplitPane split = new SplitPane(curveSide(), foot());
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.6);
        node.setCenter(split);
        InvalidationListener changed = o -> show();
        model.sitting().addListener(changed);
        model.overlays().addListener(changed);
        show();
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
        curves.requestFocus();
    }

    private void ofSitting(Consumer<SittingId> does) {
        model.sitting().get().map(Sitting::id).ifPresent(does);
    }

    private Node curveSide() {
        title.setWrapText(true);
        title.setMinHeight(Region.USE_PREF_SIZE);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        VBox side = new VBox(
                6,
                Parts.row(
                        title,
                        Parts.button(
                                "_Correct sitting",
                                "Corrects the instrument, the day and the conditions of this sitting",
                                () -> ofSitting(ways::correct)),
                        setAside.node(),
                        Parts.button("Show _all", "Shows all of every curve", curves::showEverything),
                        Parts.button("Save _picture…", "Writes the curves as PNG or SVG", this::savePicture)),
                curves,
                remark);
        VBox.setVgrow(curves, Priority.ALWAYS);
        side.getStyleClass().add("pane");
        return side;
    }

    private Node foot() {
        TabPane tabs = new TabPane(
                tab("Resonances", new VBox(6, resonances, naming())),
                tab("Strikes", strikeSide()),
                tab("Lay over", overlayList()));
        VBox.setVgrow(resonances, Priority.ALWAYS);
        return tabs;
    }

    private Node strikeSide() {
        VBox.setVgrow(strikes, Priority.ALWAYS);
        return new VBox(
                6,
                strikes,
                Parts.button(
                        "Set as_ide, or take back",
                        "Leaves the chosen strike out of the analysis, or takes it in again; the recording stays",
                        () -> toggleChosen(model, strikes)));
    }

    private static Tab tab(String words, Node content) {
        content.getStyleClass().add("pane");
        Tab tab = new Tab(words, content);
        tab.setClosable(false);
        return tab;
    }

    private TableView<ShownResonance> resonanceTable() {
        TableView<ShownResonance> table = Parts.table(
                "Resonances of the sitting",
                "No resonance stands out. Open a sitting for taps on the shelf.",
                Parts.column("Name", 110, false, r -> r.name().orElse("")),
                Parts.column("Frequency (Hz)", 120, true, r -> Figures.text(of(r).frequencyHz())),
                Parts.column("Q", 90, true, r -> Figures.text(of(r).q())),
                Parts.column("Decay, 60 dB (s)", 120, true, r -> Figures.text(of(r).decayTimeSeconds())),
                Parts.column("Level (dB)", 100, true, r -> Figures.text(of(r).levelDb())),
                Parts.column("Why this name", 320, false, ShownResonance::reason));
        table.getSelectionModel()
                .selectedItemProperty()
                .addListener((o, before, after) -> name.getEditor()
                        .setText(after == null ? "" : after.name().orElse("")));
        return table;
    }

    private static Resonance of(ShownResonance shown) {
        return shown.found().resonance();
    }

    private Node naming() {
        name.setEditable(true);
        name.getItems().setAll(Stream.of(ModeName.values()).map(ModeName::words).toList());
        name.setAccessibleText("Name of the chosen resonance");
        name.setPromptText("choose or type a name");
        // The box keeps Enter to itself; what was typed is meant, though.
        name.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER) {
                giveName();
            }
        });
        return Parts.row(
                new Label("Chosen resonance:"),
                name,
                Parts.button("_Name it", "Gives the chosen resonance this name", this::giveName));
    }

    private void giveName() {
        Optional.ofNullable(resonances.getSelectionModel().getSelectedItem())
                .ifPresent(r -> model.name(r, name.getEditor().getText()));
    }

    private static TableView<Strike> strikeTable(ResponseModel model) {
        TableView<Strike> table = Parts.table(
                "Strikes of the sitting",
                "No strike was found.",
                Parts.column("At (s)", 80, true, s -> Figures.text(s.onsetSeconds(), 2)),
                Parts.column("Peak (dBFS)", 100, true, s -> Figures.text(s.peakDbfs(), 1)),
                Parts.column("Above the noise (dB)", 140, true, s -> Figures.text(s.snrDb(), 0)),
                Parts.column("Verdict", 360, false, ResponseView::verdict));
        table.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                toggleChosen(model, table);
            }
        });
        return table;
    }

    private static void toggleChosen(ResponseModel model, TableView<Strike> strikes) {
        Optional.ofNullable(strikes.getSelectionModel().getSelectedItem()).ifPresent(model::toggle);
    }

    private static String verdict(Strike strike) {
        return strike.used() ? "used" : strike.reasons();
    }

    private Node overlayList() {
        ListView<SittingSummary> list = new ListView<>(model.choices());
        list.setAccessibleText("Sittings to lay over");
        list.setPlaceholder(Parts.paragraph("No sittings for taps yet."));
        list.setCellFactory(view -> new OverlayCell(model));
        InvalidationListener changed = o -> list.refresh();
        model.overlays().addListener(changed);
        model.sitting().addListener(changed);
        return new VBox(6, Parts.paragraph("Ticked sittings lie over the curve, each with a line of its own."), list);
    }

    private void savePicture() {
        PictureChooser.ask(node, "Save the curves", "response.png").ifPresent(model::savePicture);
    }

    private void show() {
        Optional<Sitting> sitting = model.sitting().get();
        title.setText(
                sitting.map(s -> "Response of " + model.title(s)).orElse("Response: open a sitting on the shelf"));
        setAside.show(sitting.flatMap(Sitting::setAside));
        curves.show(model.traces());
        ShownResonance selected = resonances.getSelectionModel().getSelectedItem();
        resonances.setItems(FXCollections.observableArrayList(model.resonances()));
        if (selected != null) {
            resonances
                    .getSelectionModel()
                    .select(Math.min(selected.ordinal(), resonances.getItems().size()) - 1);
        }
        List<Strike> struck =
                sitting.flatMap(s -> s.latest().taps()).map(t -> t.strikes()).orElse(List.of());
        strikes.setItems(FXCollections.observableArrayList(struck));
        remark.setText(remark(sitting));
    }

    private String remark(Optional<Sitting> sitting) {
        String band = curves.showsBands()
                ? "Shaded: 95 % interval of the mean over the strikes."
                : "So many curves would hide each other's 95 % bands; they are left out, the tables hold the figures.";
        String warnings = sitting.flatMap(s -> s.latest().taps())
                .map(t -> String.join("; ", t.warnings()))
                .orElse("");
        return (band + " ± is one standard uncertainty of this one set-up. " + warnings).strip();
    }
}
