package io.github.tapwright.desktop.timeline;

import io.github.tapwright.comparison.trend.Event;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.PictureChooser;
import io.github.tapwright.desktop.part.Sentences;
import io.github.tapwright.desktop.plot.PictureFrame;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.collections.FXCollections;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Shows an instrument over time: the picture above, words, drifts, sittings and events below. */
public final class TimelineView {

    /** Where the timeline leads. */
    public interface Ways {

        /**
         * Shows a sitting.
         *
         * @param sitting which
         */
        void open(SittingId sitting);

        /**
         * Makes a report.
         *
         * @param subject about what
         */
        void report(ReportSubject subject);
    }

    private final TimelineModel model;
    private final SettingsModel settings;
    private final Ways ways;
    private final Offer<ShopNumber> instrument;
    private final PictureFrame picture;
    private final Label title = Parts.heading("Timeline", "screen-title");
    private final Label nothing = Parts.paragraph("");
    private final Sentences words = new Sentences("The history in words");
    private final TableView<DriftRow> drifts = driftTable();
    private final TableView<SittingOutline> sittings;
    private final TableView<Event> events = eventTable();
    private final VBox node = new VBox(8);

    /**
     * A view.
     *
     * @param model who is followed
     * @param settings light and units
     * @param ways where it leads
     */
    public TimelineView(TimelineModel model, SettingsModel settings, Ways ways) {
        this.model = model;
        this.settings = settings;
        this.ways = ways;
        this.instrument = new Offer<>(
                "Instrument", "choose one", model.instruments(), n -> "Instrument " + n, model.instrument());
        this.picture = new PictureFrame("Picture of the history", settings.light());
        this.sittings = sittingTable();
        SplitPane split = new SplitPane(pictureSide(), foot());
        split.setOrientation(Orientation.VERTICAL);
        split.setDividerPositions(0.66);
        VBox.setVgrow(split, Priority.ALWAYS);
        node.getChildren().setAll(head(), split);
        node.getStyleClass().add("pane");
        model.history().addListener((InvalidationListener) o -> show());
        settings.now().addListener((InvalidationListener) o -> sittings.refresh());
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
        instrument.node().requestFocus();
    }

    private Node head() {
        return Parts.row(
                title,
                instrument.node(),
                Parts.spring(),
                Parts.button(
                        "Save _picture…",
                        "Writes the picture as PNG or SVG",
                        () -> PictureChooser.ask(node, "Save the history", "history.png")
                                .ifPresent(model::savePicture)),
                Parts.button(
                        "_Report…",
                        "Makes a report of this history",
                        () -> model.subject().ifPresent(ways::report)));
    }

    private Node pictureSide() {
        ScrollPane scroll = new ScrollPane(picture);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setAccessibleText("Picture of the history");
        scroll.setFocusTraversable(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        nothing.managedProperty().bind(nothing.visibleProperty());
        return new VBox(nothing, scroll);
    }

    private Node foot() {
        SplitPane both = new SplitPane(sittings, events);
        both.setDividerPositions(0.62);
        TabPane tabs = new TabPane(
                new Tab("In words", words.node()),
                new Tab("Drift of each figure", drifts),
                new Tab("Sittings and events", both));
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        return tabs;
    }

    private static TableView<DriftRow> driftTable() {
        return Parts.table(
                "Drift of each figure",
                "Nothing to follow yet: it takes sittings with named resonances, or plucks.",
                Parts.column("Figure", 170, false, DriftRow::figure),
                Parts.column("Sittings", 70, true, DriftRow::sittings),
                Parts.column("First → last", 120, true, DriftRow::fromTo),
                Parts.column("A month, as measured", 146, true, DriftRow::measured),
                Parts.column("p", 56, true, DriftRow::measuredProbability),
                Parts.column("A month, common air", 146, true, DriftRow::corrected),
                Parts.column("p", 56, true, DriftRow::correctedProbability),
                Parts.column("Humidity beside time", 136, true, DriftRow::besideHumidity),
                Parts.column("p, all asked", 80, true, DriftRow::adjustedProbability),
                Parts.column("Verdict", 130, false, DriftRow::verdict));
    }

    private TableView<SittingOutline> sittingTable() {
        TableView<SittingOutline> table = Parts.table(
                "Sittings of the history",
                "No sitting of this instrument may be compared.",
                Parts.column("Sitting", 60, true, s -> s.id().toString()),
                Parts.column("Taken", 140, false, s -> s.takenAt().text(model.zone())),
                Parts.column(
                        "Humidity",
                        80,
                        true,
                        s -> s.conditions()
                                .air()
                                .relativeHumidityPercent()
                                .map(h -> Figures.plain(h) + " %")
                                .orElse("unknown")),
                Parts.column(
                        "Temperature",
                        96,
                        true,
                        s -> s.conditions()
                                .air()
                                .temperatureCelsius()
                                .map(t -> settings.units().text(t) + " "
                                        + settings.units().sign())
                                .orElse("unknown")),
                Parts.column(
                        "Stage",
                        120,
                        false,
                        s -> s.conditions().stage().map(Stage::words).orElse("unknown")));
        table.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                openSelected(table);
            }
        });
        table.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                openSelected(table);
            }
        });
        return table;
    }

    private void openSelected(TableView<SittingOutline> table) {
        Optional.ofNullable(table.getSelectionModel().getSelectedItem())
                .map(SittingOutline::id)
                .ifPresent(ways::open);
    }

    private static TableView<Event> eventTable() {
        return Parts.table(
                "Events",
                "Nothing was done to the instrument between its sittings that they tell of.",
                Parts.column("Day", 100, false, e -> e.day().toString()),
                Parts.column("Event", 220, false, Event::what));
    }

    private void show() {
        Optional<History> history = model.history().get();
        Optional<?> drawn = model.picture();
        nothing.setVisible(drawn.isEmpty());
        nothing.setText(
                history.isPresent()
                        ? "There is nothing to draw: no sitting of this instrument has a named resonance or plucks."
                        : "Choose an instrument, or press History on the shelf.");
        picture.show(
                model.picture(),
                history.map(h -> "instrument " + h.instrument()).orElse(""));
        words.show(model.sentences());
        drifts.setItems(FXCollections.observableArrayList(model.drifts()));
        sittings.setItems(FXCollections.observableArrayList(model.sittings()));
        events.setItems(FXCollections.observableArrayList(model.events()));
    }
}
