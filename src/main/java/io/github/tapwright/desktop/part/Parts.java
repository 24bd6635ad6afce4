package io.github.tapwright.desktop.part;

import java.util.Collection;
import java.util.Collections;
import java.util.function.Function;
import javafx.beans.property.Property;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Controls as every screen uses them, each with the name a screen reader speaks. */
public final class Parts {

    private Parts() {}

    /**
     * A button.
     *
     * @param words on it; an underscore stands before the letter that works with Alt
     * @param does what it does, as help and for screen readers
     * @param action on press
     * @return the button
     */
    public static Button button(String words, String does, Runnable action) {
        Button button = new Button(words);
        button.setMnemonicParsing(true);
        button.setAccessibleText(words.replace("_", ""));
        button.setAccessibleHelp(does);
        button.setTooltip(new Tooltip(does));
        button.setOnAction(e -> action.run());
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    /**
     * A line to type on, bound to a model.
     *
     * @param name what is asked, for screen readers
     * @param prompt an example
     * @param value the model's
     * @return the field
     */
    public static TextField field(String name, String prompt, Property<String> value) {
        TextField field = new TextField();
        field.setPromptText(prompt);
        field.setAccessibleText(name);
        field.textProperty().bindBidirectional(value);
        return field;
    }

    /**
     * A place for notes of several lines, bound to a model; Tab leads on.
     *
     * @param name what is asked, for screen readers
     * @param lines how many are seen
     * @param value the model's
     * @return the place
     */
    public static TextArea notes(String name, int lines, Property<String> value) {
        TextArea notes = new TextArea();
        notes.setAccessibleText(name);
        notes.setPrefRowCount(lines);
        notes.setWrapText(true);
        notes.textProperty().bindBidirectional(value);
        notes.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.TAB && !e.isControlDown()) {
                notes.fireEvent(withControl(e));
                e.consume();
            }
        });
        return notes;
    }

    /** In an area Tab would write a tab; with Control it goes on to the next control, as everywhere else. */
    private static KeyEvent withControl(KeyEvent e) {
        return new KeyEvent(
                e.getEventType(),
                e.getCharacter(),
                e.getText(),
                e.getCode(),
                e.isShiftDown(),
                true,
                e.isAltDown(),
                e.isMetaDown());
    }

    /**
     * A choice, bound to a model.
     *
     * @param name what is asked, for screen readers
     * @param choices all there are
     * @param words how one reads
     * @param value the model's
     * @param <T> what is chosen
     * @return the box
     */
    public static <T> ComboBox<T> choice(
            String name, Collection<T> choices, Function<T, String> words, Property<T> value) {
        ComboBox<T> box = new ComboBox<>(FXCollections.observableArrayList(choices));
        box.setAccessibleText(name);
        box.setConverter(shown(words));
        box.valueProperty().bindBidirectional(value);
        return box;
    }

    /**
     * How the values of a choice read.
     *
     * @param words text of a value
     * @param <T> what is chosen
     * @return shows only; nothing is typed
     */
    public static <T> StringConverter<T> shown(Function<T, String> words) {
        return new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : words.apply(value);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("values are chosen, not typed");
            }
        };
    }

    /**
     * A name above a control, joined for screen readers.
     *
     * @param name what is asked
     * @param control what answers
     * @return both
     */
    public static VBox named(String name, Node control) {
        return named(new Label(name), control);
    }

    /**
     * A name that changes above a control, joined for screen readers.
     *
     * @param label what is asked
     * @param control what answers
     * @return both
     */
    public static VBox named(Label label, Node control) {
        label.setLabelFor(control);
        label.getStyleClass().add("field-name");
        return new VBox(2, label, control);
    }

    /**
     * A heading of a screen or of a part of it.
     *
     * @param words the heading
     * @param style "screen-title" or "part-title"
     * @return the label
     */
    public static Label heading(String words, String style) {
        Label label = new Label(words);
        label.getStyleClass().add(style);
        return label;
    }

    /**
     * A paragraph that breaks where it must.
     *
     * @param words the text
     * @return the label
     */
    public static Label paragraph(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /**
     * Shows a part, or takes it and its place away.
     *
     * @param part of a screen
     * @param shown whether it is there
     */
    public static void show(Region part, boolean shown) {
        part.setVisible(shown);
        part.setManaged(shown);
    }

    /**
     * Things side by side.
     *
     * @param nodes from the left
     * @return the row
     */
    public static HBox row(Node... nodes) {
        HBox row = new HBox(8, nodes);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /**
     * Two columns of the same width, to be filled.
     *
     * @param gapPixels between them
     * @return the columns
     */
    public static GridPane halves(double gapPixels) {
        return columns(2, gapPixels);
    }

    /**
     * Some columns of the same width, to be filled.
     *
     * @param count how many, from 1
     * @param gapPixels between them
     * @return the columns
     */
    public static GridPane columns(int count, double gapPixels) {
        GridPane grid = new GridPane();
        grid.setHgap(gapPixels);
        grid.setVgap(6);
        ColumnConstraints each = new ColumnConstraints();
        each.setPercentWidth(100.0 / count);
        grid.getColumnConstraints().setAll(Collections.nCopies(count, each));
        return grid;
    }

    /**
     * Pushes apart what stands left and right of it.
     *
     * @return an empty stretch
     */
    public static Region spring() {
        Region spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        return spring;
    }

    /**
     * A column of a table.
     *
     * @param title its heading
     * @param width to begin with
     * @param figures whether it holds figures, which stand to the right
     * @param words text of a row's cell
     * @param <R> the rows
     * @return the column
     */
    public static <R> TableColumn<R, String> column(
            String title, double width, boolean figures, Function<R, String> words) {
        TableColumn<R, String> column = new TableColumn<>(title);
        column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(words.apply(cell.getValue())));
        column.setPrefWidth(width);
        column.setSortable(false);
        if (figures) {
            column.getStyleClass().add("figures");
        }
        column.setCellFactory(c -> new TextCell<>());
        return column;
    }

    /** Shows the whole text as help where the cell is too narrow for it. */
    private static final class TextCell<R> extends TableCell<R, String> {
        @Override
        protected void updateItem(String text, boolean empty) {
            super.updateItem(text, empty);
            setText(empty ? null : text);
            setTooltip(empty || text == null || text.isBlank() ? null : new Tooltip(text));
        }
    }

    /**
     * An empty table.
     *
     * @param name for screen readers
     * @param nothing what is said while it has no rows
     * @param columns from the left
     * @param <R> the rows
     * @return the table
     */
    @SafeVarargs
    public static <R> TableView<R> table(String name, String nothing, TableColumn<R, ?>... columns) {
        TableView<R> table = new TableView<>();
        table.setAccessibleText(name);
        table.setPlaceholder(paragraph(nothing));
        for (TableColumn<R, ?> column : columns) {
            table.getColumns().add(column);
        }
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        return table;
    }
}
