package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.SetAsideButton;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Shows the shelf: instruments to the left, the sittings of the chosen one to the right. */
public final class ShelfView {

    /** Where the shelf leads. */
    public interface Ways {

        /**
         * Shows a sitting.
         *
         * @param sitting which
         */
        void open(SittingSummary sitting);

        /**
         * Starts a new sitting.
         *
         * @param instrument of which instrument
         * @param files recordings to keep; none to record anew
         */
        void begin(ShopNumber instrument, List<Path> files);

        /**
         * Shows an instrument's history.
         *
         * @param instrument which
         */
        void follow(ShopNumber instrument);
    }

    private final ShelfModel model;
    private final Ways ways;
    private final ZoneId zone;
    private final SettingsModel settings;
    private final StackPane node = new StackPane();
    private final SplitPane shelf = new SplitPane();
    private final ListView<ShelfRow> instruments;
    private final TableView<SittingSummary> sittings;
    private final Label chosen = Parts.heading("", "part-title");
    private final Label nature = Parts.paragraph("");
    private final Label why = Parts.paragraph("");
    private final SetAsideButton setAside;
    private final TextField search;
    private final AddInstrumentForm form;
    private Optional<CorrectionPane> correction = Optional.empty();
    private Optional<Node> cameFrom = Optional.empty();
    private Optional<ShopNumber> lastChosen = Optional.empty();
    private Optional<SittingId> lastSitting = Optional.empty();

    /**
     * A view of a shelf.
     *
     * @param model what stands on it
     * @param ways where it leads
     * @param settings the unit of temperatures
     * @param zone the workshop's
     */
    public ShelfView(ShelfModel model, Ways ways, SettingsModel settings, ZoneId zone) {
        this.model = model;
        this.settings = settings;
        this.ways = ways;
        this.zone = zone;
        this.search = Parts.field("Search the shelf", "Search: number, construction, stage", model.search());
        this.instruments = instrumentList();
        this.setAside = new SetAsideButton(() -> ofSitting(model::setAside), () -> ofSitting(model::useAgain));
        this.sittings = sittingTable();
        showWhy(Optional.empty());
        this.form = new AddInstrumentForm(model);
        VBox left = new VBox(8, search, instruments, form.node());
        left.getStyleClass().add("pane");
        VBox.setVgrow(instruments, Priority.ALWAYS);
        shelf.getItems().setAll(left, detail());
        shelf.setDividerPositions(0.42);
        node.getChildren().setAll(shelf);
        model.correcting().addListener((o, before, after) -> correct(after));
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
        correction.ifPresentOrElse(CorrectionPane::focus, search::requestFocus);
    }

    /** Opens the form for a new instrument. */
    public void addInstrument() {
        if (model.requireNoCorrection()) {
            form.open();
        }
    }

    /** A form takes the place of the shelf; afterwards the cursor is where it was. */
    private void correct(Optional<Correction> open) {
        if (correction.isEmpty()) {
            cameFrom = Optional.ofNullable(node.getScene()).map(Scene::getFocusOwner);
        }
        correction = open.map(this::pane);
        node.getChildren().setAll(correction.map(CorrectionPane::node).orElse(shelf));
        correction.ifPresentOrElse(CorrectionPane::focus, () -> cameFrom.ifPresent(Node::requestFocus));
    }

    private CorrectionPane pane(Correction of) {
        if (of instanceof CorrectInstrumentModel instrument) {
            return CorrectionPane.of(instrument);
        }
        if (of instanceof SetAsideModel aside) {
            return CorrectionPane.of(aside);
        }
        return of instanceof AnalyseAnewModel anew
                ? CorrectionPane.of(anew)
                : CorrectionPane.of(model.correctSitting(), settings);
    }

    private ListView<ShelfRow> instrumentList() {
        ListView<ShelfRow> list = new ListView<>(model.found());
        list.setAccessibleText("Instruments on the shelf");
        list.setPlaceholder(Parts.paragraph("No instrument here. Add the first one below: a shop number will do."));
        list.setCellFactory(view -> new InstrumentCell(zone, ways));
        list.getSelectionModel().selectedItemProperty().addListener((o, before, after) -> show(after));
        model.found().addListener((javafx.collections.ListChangeListener<ShelfRow>) change -> keepSelection(list));
        return list;
    }

    /** A shelf read anew is another list; what was chosen stays chosen. */
    private void keepSelection(ListView<ShelfRow> list) {
        if (list.getSelectionModel().isEmpty() && !list.getItems().isEmpty()) {
            list.getItems().stream()
                    .filter(row ->
                            lastChosen.equals(Optional.of(row.instrument().shopNumber())))
                    .findFirst()
                    .ifPresentOrElse(list.getSelectionModel()::select, list.getSelectionModel()::selectFirst);
        }
    }

    private void show(ShelfRow row) {
        if (row != null) {
            lastChosen = Optional.of(row.instrument().shopNumber());
        }
        chosen.setText(
                row == null
                        ? ""
                        : "Instrument " + row.instrument().shopNumber()
                                + row.instrument()
                                        .nickname()
                                        .map(n -> " “" + n + "”")
                                        .orElse(""));
        nature.setText(row == null ? "" : row.nature());
        sittings.setItems(FXCollections.observableArrayList(row == null ? List.of() : row.sittings()));
        sittings.getItems().stream()
                .filter(s -> lastSitting.equals(Optional.of(s.id())))
                .findFirst()
                .ifPresentOrElse(sittings.getSelectionModel()::select, sittings.getSelectionModel()::selectFirst);
    }

    private Optional<Instrument> selected() {
        return Optional.ofNullable(instruments.getSelectionModel().getSelectedItem())
                .map(ShelfRow::instrument);
    }

    private Optional<SittingSummary> selectedSitting() {
        return Optional.ofNullable(sittings.getSelectionModel().getSelectedItem());
    }

    private TableView<SittingSummary> sittingTable() {
        TableView<SittingSummary> table = Parts.table(
                "Sittings of the chosen instrument",
                "No sitting yet. Press New sitting, or drop recordings on the instrument.",
                Parts.column("When", 130, false, s -> s.takenAt().text(zone)),
                Parts.column(
                        "Stage", 110, false, s -> s.stage().map(Stage::words).orElse("unknown")),
                Parts.column("For", 60, false, SittingSummary::procedure),
                Parts.column("Air", 80, false, ShelfView::air),
                Parts.column("Found", 200, false, ShelfView::resonances));
        table.getSelectionModel().selectedItemProperty().addListener((o, before, after) -> {
            if (after != null) {
                lastSitting = Optional.of(after.id());
            }
            showWhy(Optional.ofNullable(after));
        });
        table.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                openSelected();
            }
        });
        table.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                openSelected();
            }
        });
        return table;
    }

    private static String air(SittingSummary sitting) {
        return sitting.air()
                .relativeHumidityPercent()
                .map(h -> Math.round(h) + " % RH")
                .orElse("unknown");
    }

    private static String resonances(SittingSummary sitting) {
        if (sitting.setAside().isPresent()) {
            return "set aside: " + sitting.setAside().get().reason();
        }
        return sitting.resonances().stream()
                .filter(l -> l.name().isPresent())
                .map(l -> l.name().get() + " " + Math.round(l.frequencyHz()) + " Hz")
                .collect(Collectors.joining(", "));
    }

    /** The whole reason, which may be longer than its cell. */
    private void showWhy(Optional<SittingSummary> sitting) {
        Optional<OutOfUse> reason = sitting.flatMap(SittingSummary::setAside);
        why.setText(reason.map(r -> "Set aside, so that nothing else uses it: " + r.reason())
                .orElse(""));
        Parts.show(why, reason.isPresent());
        setAside.show(reason);
    }

    private void ofSitting(Consumer<SittingId> does) {
        selectedSitting().map(SittingSummary::id).ifPresent(does);
    }

    private void openSelected() {
        selectedSitting().ifPresent(ways::open);
    }

    private Node detail() {
        VBox detail = new VBox(
                8,
                Parts.row(
                        chosen,
                        Parts.spring(),
                        Parts.button(
                                "Correct _instrument",
                                "Corrects what is written down about the chosen instrument",
                                () -> selected().ifPresent(model::correct))),
                nature,
                sittings,
                why,
                Parts.row(
                        Parts.button("_Open sitting", "Shows the chosen sitting", this::openSelected),
                        Parts.button(
                                "_New sitting",
                                "Takes the chosen instrument to the microphone, or keeps recordings of it",
                                () -> selected().ifPresent(i -> ways.begin(i.shopNumber(), List.of()))),
                        Parts.button(
                                "_History",
                                "Shows how the chosen instrument changed over time",
                                () -> selected().ifPresent(i -> ways.follow(i.shopNumber())))),
                Parts.row(
                        Parts.button(
                                "_Correct sitting",
                                "Corrects the instrument, the day and the conditions of the chosen sitting",
                                () -> ofSitting(model::correct)),
                        setAside.node(),
                        Parts.button(
                                "Analyse ane_w",
                                "Analyses the recordings of the chosen sitting by today's method; earlier results stay",
                                () -> ofSitting(model::analyseAnew))));
        detail.getStyleClass().add("pane");
        VBox.setVgrow(sittings, Priority.ALWAYS);
        return detail;
    }
}
