package io.github.tapwright.desktop.notes;

import io.github.tapwright.desktop.part.Offer;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.sound.PlaybackBar;
import io.github.tapwright.desktop.sound.PlaybackModel;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.Stretch;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Shows the fingerboard above, and below it the chosen note: figures, partials, sound. */
public final class NotesView {

    /** Where the screen leads. */
    public interface Ways {

        /**
         * Takes a note to the blind listening.
         *
         * @param note which
         */
        void listen(Stretch note);
    }

    private final NotesModel model;
    private final SettingsModel settings;
    private final BorderPane node = new BorderPane();
    private final ObjectProperty<Optional<SittingSummary>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final Offer<SittingSummary> sitting;
    private final ComboBox<BoardQuantity> quantity;
    private final Label title = Parts.heading("Notes", "screen-title");
    private final Label summary = Parts.paragraph("");
    private final Label meaning = Parts.paragraph("");
    private final BoardPane board;
    private final NotePane note;
    private final TableView<Integer> all;
    private final TableView<PluckMean> plucks;
    private final PlaybackBar playback;
    private final SplitPane detail;

    /**
     * A view.
     *
     * @param model what is looked at
     * @param playback what is heard
     * @param ways where it leads
     * @param settings light and dark
     */
    public NotesView(NotesModel model, PlaybackModel playback, Ways ways, SettingsModel settings) {
        this.model = model;
        this.settings = settings;
        this.board = new BoardPane(model::choose);
        this.note = new NotePane(model, ways, settings);
        this.playback = new PlaybackBar(playback);
        this.sitting = sittingChoice();
        this.quantity = Parts.choice(
                "What the map shows", List.of(BoardQuantity.values()), BoardQuantity::words, model.quantity());
        this.all = noteTable();
        this.plucks = pluckTable();
        this.detail = new SplitPane(left(), note.spectrumNode());
        detail.setDividerPositions(0.4);
        node.getStyleClass().add("pane");
        node.addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        model.shown().addListener((o, before, after) -> show());
        model.choices().addListener((InvalidationListener) o -> chooseShown());
        model.quantity().addListener((o, before, after) -> showBoard());
        model.note().addListener((o, before, after) -> showNote());
        settings.light().addListener((o, before, after) -> showBoard());
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
        if (model.run().isPresent()) {
            board.focusHere();
        } else {
            sitting.node().requestFocus();
        }
    }

    private Offer<SittingSummary> sittingChoice() {
        chosen.addListener((o, before, after) -> after.map(SittingSummary::id)
                .filter(id -> model.sitting().filter(s -> s.id().equals(id)).isEmpty())
                .ifPresent(model::open));
        Offer<SittingSummary> offer = new Offer<>(
                "Sitting for notes or plucks",
                "Choose a sitting for notes or plucks",
                model.choices(),
                model::title,
                chosen);
        offer.node().setPlaceholder(Parts.paragraph("No sitting for notes or plucks yet."));
        offer.node().setPrefWidth(330);
        return offer;
    }

    private Node left() {
        TabPane tabs = new TabPane(tab("Note", note.figuresNode()), tab("All notes", all));
        return tabs;
    }

    private static Tab tab(String words, Node content) {
        Tab tab = new Tab(words, content);
        tab.setClosable(false);
        return tab;
    }

    private TableView<Integer> noteTable() {
        TableView<Integer> table = Parts.table(
                "Every note in the order played",
                "No notes.",
                Parts.column("No.", 40, true, n -> Integer.toString(n + 1)),
                Parts.column("At (s)", 66, true, n -> Figures.text(of(n).attackSeconds(), 2)),
                Parts.column(
                        "Place",
                        130,
                        false,
                        n -> of(n).place()
                                .map(p -> "string " + p.string() + ", fret " + p.fret())
                                .orElseGet(() -> "none: " + of(n).whyNoPlace().orElse(""))),
                Parts.column(
                        "Pitch (Hz)",
                        130,
                        true,
                        n -> NoteFacts.orReason(of(n).result().pitch(), p -> Figures.text(p.hz(), 2))));
        table.getSelectionModel()
                .selectedItemProperty()
                .addListener((o, before, after) -> Optional.ofNullable(after).ifPresent(model::choose));
        return table;
    }

    private Fingerboard.Note of(int number) {
        return model.run().orElseThrow().notes().get(number);
    }

    private static TableView<PluckMean> pluckTable() {
        return Parts.table(
                "Plucks of the open strings",
                "No pluck has the pitch of an open string.",
                Parts.column("String", 60, true, m -> Integer.toString(m.string())),
                Parts.column("Plucks", 60, true, m -> Integer.toString(m.count())),
                Parts.column("LAFmax (dB)", 190, true, m -> PluckMean.text(m.lafMaxDb())),
                Parts.column("Momentary loudness (LUFS)", 200, true, m -> PluckMean.text(m.momentaryLufs())),
                Parts.column("Loudness (sone)", 190, true, m -> PluckMean.text(m.sone())));
    }

    /** Another screen may have opened a sitting here, before or after it was listed. */
    private void chooseShown() {
        model.sitting()
                .flatMap(s -> model.choices().stream()
                        .filter(c -> c.id().equals(s.id()))
                        .findFirst())
                .ifPresent(s -> chosen.set(Optional.of(s)));
    }

    private void show() {
        chooseShown();
        title.setText(model.sitting()
                .map(s -> (model.plucks().isPresent() ? "Plucks of " : "Notes of ") + s.instrument() + ", sitting "
                        + s.id())
                .orElse("Notes: choose a sitting"));
        summary.setText(model.summary());
        HBox row = Parts.row(title, Parts.spring(), sitting.node());
        if (model.run().isPresent()) {
            HBox choice = Parts.row(quantity, meaning);
            HBox.setHgrow(meaning, Priority.ALWAYS);
            node.setTop(new VBox(6, row, summary, choice, board));
            node.setCenter(detail);
            node.setBottom(playback.node());
            all.setItems(FXCollections.observableArrayList(
                    IntStream.range(0, model.run().orElseThrow().notes().size())
                            .boxed()
                            .toList()));
        } else {
            node.setTop(new VBox(6, row, summary));
            node.setCenter(model.plucks().isPresent() ? plucks : nothing());
            node.setBottom(null);
            plucks.setItems(FXCollections.observableArrayList(model.pluckMeans()));
        }
        showBoard();
        showNote();
    }

    private static Node nothing() {
        VBox box = new VBox(
                Parts.paragraph(
                        "Choose a sitting above. A sitting for notes begins on the shelf: New sitting,"
                                + " procedure notes; play every fret of every string, each left to ring for three seconds or more."));
        box.getStyleClass().add("pane");
        return box;
    }

    private void showBoard() {
        meaning.setText(model.quantity().get().meaning()
                + (settings.light().get() == io.github.tapwright.chart.Light.DAY ? " Darker" : " Brighter")
                + " is more; framed ▾ is dead.");
        int strings =
                model.run().map(r -> r.settings().tuning().openHz().size()).orElse(0);
        board.show(model.cells(), strings, settings.light().get(), model.note().get());
    }

    private void showNote() {
        note.show();
        model.note().get().ifPresent(n -> all.getSelectionModel().select(n));
        board.mark(model.note().get());
    }

    private void press(KeyEvent event) {
        boolean plain = !event.isShortcutDown() && !event.isAltDown();
        if (plain && event.getCode() == KeyCode.H && model.note().get().isPresent()) {
            model.hear();
            event.consume();
        }
    }
}
