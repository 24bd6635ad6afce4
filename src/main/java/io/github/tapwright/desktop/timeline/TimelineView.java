package io.github.tapwright.desktop.timeline;

import io.github.tapwright.comparison.group.GroupWords;
import io.github.tapwright.comparison.trend.Drift;
import io.github.tapwright.comparison.trend.Event;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.plot.PicturePane;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;

/** Shows one instrument over time: the words, the picture with the climate below, drifts and what was done to it. */
public final class TimelineView {

    private final TimelineModel model;
    private final PicturePane picture;
    private final VBox words = new VBox(3);
    private final TableView<Series> drifts = driftTable();
    private final TableView<Event> events = eventTable();
    private final ComboBox<Optional<ShopNumber>> whose;
    private final ScrollPane node;

    /**
     * A view.
     *
     * @param model whose history
     * @param settings light
     */
    public TimelineView(TimelineModel model, SettingsModel settings) {
        this.model = model;
        this.picture = new PicturePane("History of the instrument", settings.light());
        this.whose = new ComboBox<>(model.instruments());
        whose.setAccessibleText("Instrument followed");
        whose.setConverter(Parts.shown(n -> n.map(ShopNumber::toString).orElse("choose one")));
        whose.valueProperty().bindBidirectional(model.chosen());
        drifts.setPrefHeight(230);
        events.setPrefHeight(150);
        VBox all = new VBox(
                10,
                Parts.named("Instrument", whose),
                words,
                picture,
                Parts.heading("Drift a month", "part-title"),
                drifts,
                Parts.heading("What was done to it", "part-title"),
                events);
        all.getStyleClass().add("pane");
        node = new ScrollPane(all);
        node.setFitToWidth(true);
        node.setAccessibleText("History");
        model.history().addListener((o, before, after) -> show(after));
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
        whose.requestFocus();
    }

    private void show(Optional<History> history) {
        words.getChildren().setAll(model.words().stream().map(w -> (Node) Parts.paragraph("•  " + w)).toList());
        picture.show(model.picture());
        drifts.setItems(FXCollections.observableArrayList(history.map(History::series).orElse(List.of())));
        events.setItems(FXCollections.observableArrayList(history.map(History::events).orElse(List.of())));
    }

    private static TableView<Series> driftTable() {
        return Parts.table(
                "Drift of each quantity",
                "Choose an instrument.",
                Parts.column("Quantity", 190, false, s -> s.subject().words()),
                Parts.column("n", 50, true, s -> Integer.toString(s.inStretch())),
                Parts.column("As measured", 170, true, s -> line(s.drift().map(Drift::measured))),
                Parts.column("In the common air", 170, true, s -> line(s.drift().map(Drift::corrected))),
                Parts.column("p, all asked", 100, true, s -> s.drift()
                        .map(d -> GroupWords.probability(d.adjustedProbability()).replace("= ", ""))
                        .orElse("–")));
    }

    private static String line(Optional<Drift.Line> line) {
        return line.map(l -> l.slope()
                        .interval()
                        .map(Figures::interval)
                        .orElseGet(() -> Figures.text(l.slope().slope(), 3)))
                .orElse("too few");
    }

    private static TableView<Event> eventTable() {
        return Parts.table(
                "Events",
                "Nothing was written down.",
                Parts.column("Day", 110, false, e -> e.day().toString()),
                Parts.column("What", 400, false, Event::what));
    }
}
