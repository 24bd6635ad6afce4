package io.github.tapwright.desktop.notes;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.plot.PicturePane;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.PartialDecay;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One note: figures to the left, partials and their picture to the right. */
final class NotePane {

    private final NotesModel model;
    private final Label title = Parts.heading("", "part-title");
    private final GridPane facts = new GridPane();
    private final TableView<Partial> partials;
    private final PicturePane picture;
    private final Button hear;
    private final Button listen;
    private final Node figures;
    private final Node spectrum;

    NotePane(NotesModel model, NotesView.Ways ways, SettingsModel settings) {
        this.model = model;
        this.picture = new PicturePane("Partials of the note: level and decay over frequency", settings.light());
        this.partials = partialTable();
        this.hear = Parts.button("_Hear it", "Plays the note from the kept recording (H)", model::hear);
        this.listen = Parts.button(
                "Listen _blind…",
                "Takes this note to the blind listening",
                () -> model.stretch().ifPresent(ways::listen));
        facts.setHgap(10);
        facts.setVgap(3);
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(104);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        facts.getColumnConstraints().setAll(names, words);
        this.figures = figures();
        this.spectrum = spectrum();
    }

    Node figuresNode() {
        return figures;
    }

    Node spectrumNode() {
        return spectrum;
    }

    private Node figures() {
        ScrollPane scroll = new ScrollPane(facts);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText("What is known about the note");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        VBox box = new VBox(6, Parts.row(title, Parts.spring(), hear, listen), scroll);
        box.getStyleClass().add("pane");
        return box;
    }

    private Node spectrum() {
        ScrollPane scroll = new ScrollPane(picture);
        scroll.setFitToWidth(true);
        scroll.setAccessibleText("Picture of the partials");
        TabPane tabs = new TabPane(tab("Partials", partials), tab("Picture", scroll));
        return tabs;
    }

    private static Tab tab(String words, Node content) {
        Tab tab = new Tab(words, content);
        tab.setClosable(false);
        return tab;
    }

    private static TableView<Partial> partialTable() {
        return Parts.table(
                "Partials of the note",
                "No partials: choose a note with a pitch.",
                Parts.column("n", 34, true, p -> Integer.toString(p.number())),
                Parts.column("Frequency (Hz)", 116, true, p -> Figures.text(p.frequencyHz(), 2)),
                Parts.column("Level (dB)", 92, true, p -> Figures.text(p.levelDb(), 1)),
                Parts.column("Decay (s)", 92, true, p -> seconds(p.decay().whole())),
                Parts.column(
                        "early (s)",
                        92,
                        true,
                        p -> seconds(
                                p.decay() instanceof PartialDecay.TwoStage
                                        ? p.decay().early()
                                        : Optional.empty())),
                Parts.column("late (s)", 92, true, p -> seconds(p.decay().late())),
                Parts.column("Remark", 120, false, Partial::remark));
    }

    private static String seconds(Optional<Estimate> time) {
        return time.map(t -> Figures.text(t, 2)).orElse("–");
    }

    void show() {
        title.setText(model.noteTitle());
        facts.getChildren().clear();
        int row = 0;
        for (NoteFact fact : model.facts()) {
            Label name = new Label(fact.name());
            name.getStyleClass().add("field-name");
            Label words = Parts.paragraph(fact.words());
            words.setAccessibleText(fact.name() + ": " + fact.words());
            facts.addRow(row++, name, words);
        }
        partials.setItems(FXCollections.observableArrayList(model.partials()));
        picture.show(model.picture());
        boolean none = model.note().get().isEmpty();
        hear.setDisable(none);
        listen.setDisable(none);
    }
}
