package io.github.tapwright.desktop.listening;

import io.github.tapwright.comparison.listening.ListeningWords;
import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.Stretch;
import io.github.tapwright.sitting.listening.ListeningSession;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Where sounds are chosen, and earlier listenings wait. */
final class ChoosingPane {

    /** The same for both lists, which then share the room alike. */
    private static final double EQUAL_WIDTH = 300;

    private final ListeningModel model;
    private final Offer<SittingSummary> sitting;
    private final ListView<Stretch> offered;
    private final ListView<Stretch> chosen;
    private final TableView<ListeningSession> sessions;
    private final VBox node;

    ChoosingPane(ListeningModel model) {
        this.model = model;
        ObjectProperty<Optional<SittingSummary>> from = new SimpleObjectProperty<>(Optional.empty());
        this.sitting = new Offer<>(
                "Sitting to take sounds from",
                "Choose a sitting",
                model.choice().sittings(),
                model::title,
                from);
        from.addListener(
                (o, before, after) -> after.ifPresent(s -> model.choice().offer(s.id())));
        sitting.node().setPrefWidth(EQUAL_WIDTH);
        this.offered = list(
                "Sounds of the sitting",
                "Choose a sitting above: of a run each note is a sound, else each recording.",
                model.choice().offered(),
                model.choice()::choose);
        this.chosen = list(
                "Sounds to listen to",
                "Two sounds at least. Enter takes one from the left.",
                model.choice().chosen(),
                s -> {});
        this.sessions = sessionTable();
        HBox lists = new HBox(12, left(), right());
        VBox.setVgrow(lists, Priority.ALWAYS);
        this.node = new VBox(
                8,
                Parts.heading("Blind listening", "screen-title"),
                Parts.paragraph("Can the sounds be told apart by ear? They are cut to one length and the louder ones"
                        + " turned down until all are equally loud, then asked about in random order."),
                lists,
                start(),
                Parts.heading("Earlier listenings", "part-title"),
                sessions);
    }

    Node node() {
        return node;
    }

    void focus() {
        sitting.node().requestFocus();
    }

    private static ListView<Stretch> list(
            String name,
            String nothing,
            javafx.collections.ObservableList<Stretch> sounds,
            Consumer<Stretch> activated) {
        ListView<Stretch> list = new ListView<>(sounds);
        list.setAccessibleText(name);
        list.setPrefWidth(EQUAL_WIDTH);
        list.setPlaceholder(Parts.paragraph(nothing));
        list.setCellFactory(v -> new ListCell<>() {
            @Override
            protected void updateItem(Stretch sound, boolean empty) {
                super.updateItem(sound, empty);
                setText(empty || sound == null ? null : sound.words());
            }
        });
        list.setOnKeyPressed(e -> {
            if (ListeningView.activates(e)) {
                selected(list).ifPresent(activated);
            }
        });
        list.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                selected(list).ifPresent(activated);
            }
        });
        return list;
    }

    private static Optional<Stretch> selected(ListView<Stretch> list) {
        return Optional.ofNullable(list.getSelectionModel().getSelectedItem());
    }

    private Node left() {
        VBox box = new VBox(
                6,
                Parts.named("Sounds from", sitting.node()),
                offered,
                Parts.row(Parts.button(
                        "A_dd",
                        "Takes the chosen sound into the listening (Enter)",
                        () -> selected(offered).ifPresent(model.choice()::choose))));
        VBox.setVgrow(offered, Priority.ALWAYS);
        HBox.setHgrow(box, Priority.ALWAYS);
        return box;
    }

    private Node right() {
        Label title = new Label("To listen to");
        title.getStyleClass().add("field-name");
        title.setLabelFor(chosen);
        VBox box = new VBox(
                6,
                title,
                chosen,
                Parts.row(Parts.button(
                        "_Remove",
                        "Leaves the chosen sound out",
                        () -> selected(chosen).ifPresent(model.choice()::leaveOut))));
        VBox.setVgrow(chosen, Priority.ALWAYS);
        HBox.setHgrow(box, Priority.ALWAYS);
        return box;
    }

    private Node start() {
        Button begin = Parts.button("_Start listening", "Matches the sounds and asks the first question", model::begin);
        begin.getStyleClass().add("accent");
        begin.disableProperty().bind(Bindings.size(model.choice().chosen()).lessThan(2));
        HBox row = Parts.row(
                Parts.named(
                        "Questions",
                        Parts.choice(
                                "Number of questions",
                                ListeningModel.TRIAL_COUNTS,
                                n -> Integer.toString(n),
                                model.trialCount())),
                Parts.named("Listener", Parts.field("Listener", "who listens", model.listener())),
                Parts.named(
                        "Heard through",
                        Parts.field("Heard through", "headphones, loudspeaker", model.playedThrough())),
                Parts.spring(),
                begin);
        row.setAlignment(javafx.geometry.Pos.BOTTOM_LEFT);
        return row;
    }

    private TableView<ListeningSession> sessionTable() {
        TableView<ListeningSession> table = Parts.table(
                "Earlier listenings",
                "None yet.",
                Parts.column("No.", 44, true, s -> s.id().toString()),
                Parts.column("When", 130, false, model::when),
                Parts.column("Listener", 90, false, s -> s.setUp().listener().orElse("")),
                Parts.column("Result", 230, false, ListeningWords::brief),
                Parts.column("Sounds", 420, false, ChoosingPane::sounds));
        table.setItems(model.sessions());
        table.setPrefHeight(150);
        table.setMinHeight(90);
        table.setOnKeyPressed(e -> {
            if (ListeningView.activates(e)) {
                openSelected();
            }
        });
        table.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                openSelected();
            }
        });
        return table;
    }

    private void openSelected() {
        Optional.ofNullable(sessions.getSelectionModel().getSelectedItem()).ifPresent(model::open);
    }

    private static String sounds(ListeningSession session) {
        return session.setUp().sounds().stream()
                .map(s -> s.stretch().words())
                .collect(java.util.stream.Collectors.joining(" / "));
    }
}
