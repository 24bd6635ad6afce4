package io.github.tapwright.desktop.notes;

import io.github.tapwright.chart.Light;
import io.github.tapwright.note.run.Fret;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** The fingerboard: a row a string, string 1 on top, a column a fret. Arrows move, Enter chooses. */
final class BoardPane extends GridPane {

    private static final double CELL_HEIGHT = 27;

    private final IntConsumer chosen;
    private final Map<Fret, Button> cells = new HashMap<>();
    private final Map<Button, Integer> notes = new HashMap<>();
    private Optional<Fret> here = Optional.empty();

    BoardPane(IntConsumer chosen) {
        this.chosen = chosen;
        setAccessibleText("Fingerboard map: a row a string, string 1 on top, a column a fret");
        getStyleClass().add("board");
        setHgap(2);
        setVgap(2);
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
    }

    /** Shows a map; the place that had the cursor keeps it where it still holds a note. */
    void show(List<BoardCell> map, int stringCount, Light light, Optional<Integer> note) {
        boolean hadFocus = cells.values().stream().anyMatch(Button::isFocused);
        getChildren().clear();
        getColumnConstraints().clear();
        cells.clear();
        notes.clear();
        if (map.isEmpty()) {
            return;
        }
        int last = map.stream().mapToInt(c -> c.place().fret()).max().orElse(0);
        head(stringCount, last);
        map.forEach(cell -> add(cell, light));
        mark(note);
        Optional<Fret> chosenPlace = map.stream()
                .filter(c -> note.filter(n -> n == c.note()).isPresent())
                .map(BoardCell::place)
                .findFirst();
        enter(chosenPlace
                .or(() -> here.filter(cells::containsKey))
                .orElse(map.get(0).place()));
        if (hadFocus) {
            focusHere();
        }
    }

    private void head(int stringCount, int lastFret) {
        ColumnConstraints names = new ColumnConstraints(24);
        names.setHalignment(HPos.CENTER);
        getColumnConstraints().add(names);
        for (int fret = 0; fret <= lastFret; fret++) {
            ColumnConstraints column = new ColumnConstraints(30, 54, 90);
            column.setHgrow(Priority.ALWAYS);
            column.setHalignment(HPos.CENTER);
            getColumnConstraints().add(column);
            add(quiet(fret == 0 ? "open" : Integer.toString(fret)), fret + 1, 0);
        }
        for (int string = 1; string <= stringCount; string++) {
            add(quiet(Integer.toString(string)), 0, string);
        }
    }

    private static Label quiet(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("quiet");
        return label;
    }

    private void add(BoardCell cell, Light light) {
        Button button = new Button(cell.text() + (cell.dead().isPresent() ? " ▾" : ""));
        button.setAccessibleText(cell.spoken());
        button.setTooltip(new Tooltip(cell.spoken()));
        button.setMinSize(28, CELL_HEIGHT);
        button.setPrefHeight(CELL_HEIGHT);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setFocusTraversable(false);
        button.getStyleClass().setAll("board-cell");
        cell.share().ifPresent(share -> {
            Shade shade = Shade.of(share, light);
            button.setStyle(
                    "-fx-background-color: " + shade.background() + "; -fx-text-fill: " + shade.letters() + ";");
        });
        if (cell.dead().isPresent()) {
            button.getStyleClass().add("dead");
        }
        button.setOnAction(e -> {
            enter(cell.place());
            chosen.accept(cell.note());
        });
        cells.put(cell.place(), button);
        notes.put(button, cell.note());
        add(button, cell.place().fret() + 1, cell.place().string());
    }

    /** Marks the chosen note, and nothing else. */
    void mark(Optional<Integer> note) {
        notes.forEach((button, number) -> {
            button.getStyleClass().remove("chosen");
            if (note.filter(number::equals).isPresent()) {
                button.getStyleClass().add("chosen");
            }
        });
    }

    /** One cell takes part in the round of Tab; the arrows move within. */
    private void enter(Fret place) {
        here.map(cells::get).ifPresent(b -> b.setFocusTraversable(false));
        here = Optional.of(place);
        Optional.ofNullable(cells.get(place)).ifPresent(b -> b.setFocusTraversable(true));
    }

    void focusHere() {
        here.map(cells::get).ifPresent(Button::requestFocus);
    }

    private void press(KeyEvent event) {
        Optional<Fret> next = switch (event.getCode()) {
            case LEFT -> towards(0, -1);
            case RIGHT -> towards(0, 1);
            case UP -> towards(-1, 0);
            case DOWN -> towards(1, 0);
            case HOME -> edge(-1);
            case END -> edge(1);
            case ENTER -> {
                here.map(cells::get).ifPresent(Button::fire);
                event.consume();
                yield Optional.empty();
            }
            default -> Optional.empty();
        };
        next.ifPresent(place -> {
            enter(place);
            focusHere();
        });
        if (event.getCode().isArrowKey()) {
            event.consume();
        }
    }

    private Optional<Fret> edge(int direction) {
        return here.flatMap(h -> cells.keySet().stream()
                .filter(p -> p.string() == h.string())
                .max((a, b) -> direction * Integer.compare(a.fret(), b.fret())));
    }

    /** The nearest place that way; of other strings the nearest fret. */
    private Optional<Fret> towards(int strings, int frets) {
        return here.flatMap(h -> cells.keySet().stream()
                .filter(p -> frets != 0
                        ? p.string() == h.string() && Integer.signum(p.fret() - h.fret()) == frets
                        : Integer.signum(p.string() - h.string()) == strings)
                .min((a, b) -> Integer.compare(distance(h, a), distance(h, b))));
    }

    private static int distance(Fret a, Fret b) {
        return 100 * Math.abs(a.string() - b.string()) + Math.abs(a.fret() - b.fret());
    }
}
