package io.github.tapwright.desktop.plot;

import io.github.tapwright.chart.CurveDrawing;
import io.github.tapwright.chart.CurveSheet;
import io.github.tapwright.chart.CurveWindow;
import io.github.tapwright.chart.Light;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.note.NoteName;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableDoubleValue;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;

/**
 * Response curves a reader moves about in.
 *
 * <p>Drag to pan, turn the wheel to come closer, with Shift in level; a double click shows everything. By keyboard:
 * arrows pan, + and − come closer and step back, 0 shows everything. A crosshair tells frequency, note and level.
 */
public final class CurvePane extends Region {

    private static final double STEP = 0.1;
    private static final double CLOSER = 1.25;

    private final ImageView view = new ImageView();
    private final Line upright = new Line();
    private final Line level = new Line();
    private final Label reading = new Label();
    private final ObservableValue<Light> light;
    private final ObservableDoubleValue a4Hz;

    private List<Trace> traces = List.of();
    private CurveDrawing drawing;
    private Optional<CurveWindow> window = Optional.empty();
    private Optional<CurveSheet> sheet = Optional.empty();
    private Point2D grip = Point2D.ZERO;

    /**
     * A pane without curves.
     *
     * @param light on which paper to draw
     * @param a4Hz tuning note of the note names
     */
    public CurvePane(ObservableValue<Light> light, ObservableDoubleValue a4Hz) {
        this.light = light;
        this.a4Hz = a4Hz;
        this.drawing = new CurveDrawing(List.of(), a4Hz.get());
        setFocusTraversable(true);
        setAccessibleText("Response curves");
        setAccessibleHelp("Arrows pan, plus and minus come closer and step back, zero shows everything");
        setMinSize(200, 160);
        getStyleClass().add("curve-pane");
        for (Line line : List.of(upright, level)) {
            line.getStyleClass().add("crosshair");
            line.setManaged(false);
            line.setVisible(false);
        }
        reading.getStyleClass().add("reading");
        reading.setManaged(false);
        reading.setVisible(false);
        getChildren().addAll(view, upright, level, reading);
        light.addListener((o, before, after) -> redraw());
        a4Hz.addListener((o, before, after) -> show(traces));
        listen();
    }

    private void listen() {
        setOnMousePressed(this::take);
        setOnMouseDragged(this::drag);
        setOnMouseMoved(e -> point(e.getX(), e.getY()));
        setOnMouseExited(e -> hideCrosshair());
        setOnScroll(this::turn);
        setOnKeyPressed(this::press);
        setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                showEverything();
            }
        });
    }

    /**
     * Shows other curves; the window stays where it is unless there was nothing to see before.
     *
     * @param shown the curves, the first on top
     */
    public void show(List<Trace> shown) {
        boolean first = sheet.isEmpty() || window.isEmpty();
        traces = List.copyOf(shown);
        drawing = new CurveDrawing(traces, a4Hz.get());
        if (first || traces.isEmpty()) {
            window = traces.isEmpty() ? Optional.empty() : Optional.of(drawing.everything());
        }
        redraw();
    }

    /**
     * Whether the 95 % bands are drawn.
     *
     * @return false where there are too many curves
     */
    public boolean showsBands() {
        return drawing.showsBands();
    }

    /** Shows all of every curve. */
    public void showEverything() {
        move(drawing.everything());
    }

    /**
     * Shows a part.
     *
     * @param next which
     */
    public void move(CurveWindow next) {
        window = Optional.of(next);
        redraw();
    }

    /**
     * What is shown.
     *
     * @return the window
     */
    public CurveWindow window() {
        return window.orElseGet(drawing::everything);
    }

    private void take(MouseEvent event) {
        requestFocus();
        grip = new Point2D(event.getX(), event.getY());
    }

    private void drag(MouseEvent event) {
        sheet.ifPresent(s -> {
            hideCrosshair();
            move(window().slid((grip.getX() - event.getX()) / s.width(), (event.getY() - grip.getY()) / s.height()));
            grip = new Point2D(event.getX(), event.getY());
        });
    }

    private void turn(ScrollEvent event) {
        // With Shift some systems turn an upright wheel into a sideways one.
        double turned = event.getDeltaY() + event.getDeltaX();
        if (turned == 0) {
            return;
        }
        double factor = turned > 0 ? CLOSER : 1 / CLOSER;
        sheet.ifPresent(s -> move(
                event.isShiftDown()
                        ? window().taller(factor, s.levelDbAt(event.getY()))
                        : window().closer(factor, s.frequencyHzAt(event.getX()))));
        event.consume();
    }

    private void press(KeyEvent event) {
        CurveWindow now = window();
        double middleHz = Math.sqrt(now.lowHz() * now.highHz());
        Optional<CurveWindow> next = switch (event.getCode()) {
            case LEFT -> Optional.of(now.slid(-STEP, 0));
            case RIGHT -> Optional.of(now.slid(STEP, 0));
            case UP -> Optional.of(now.slid(0, STEP));
            case DOWN -> Optional.of(now.slid(0, -STEP));
            case PLUS, ADD, EQUALS -> Optional.of(now.closer(CLOSER, middleHz));
            case MINUS, SUBTRACT -> Optional.of(now.closer(1 / CLOSER, middleHz));
            case DIGIT0, NUMPAD0, HOME -> Optional.of(drawing.everything());
            default -> Optional.empty();
        };
        if (next.isPresent() && !event.isShortcutDown()) {
            move(next.get());
            event.consume();
        }
    }

    private void redraw() {
        if (getWidth() < 1 || getHeight() < 1) {
            return;
        }
        CurveSheet drawn = drawing.draw(window(), getWidth(), getHeight(), Pixels.scaleOf(this), light.getValue());
        sheet = Optional.of(drawn);
        view.setImage(Pixels.image(drawn.raster()));
        view.setFitWidth(getWidth());
        view.setFitHeight(getHeight());
    }

    private void point(double x, double y) {
        Optional<CurveSheet> under = sheet.filter(s -> s.holds(x, y));
        if (under.isEmpty()) {
            hideCrosshair();
            return;
        }
        CurveSheet s = under.get();
        place(upright, x, s.top(), x, s.top() + s.height());
        place(level, s.left(), y, s.left() + s.width(), y);
        double hz = s.frequencyHzAt(x);
        String note = NoteName.find(hz, a4Hz.get())
                .map(n -> n + " " + Figures.difference(n.centsTo(hz, a4Hz.get()), 0) + " cents   ")
                .orElse("");
        reading.setText(Figures.text(hz, 1) + " Hz   " + note + Figures.difference(s.levelDbAt(y), 1) + " dB");
        reading.setVisible(true);
        reading.autosize();
        double left = Math.min(x + 10, s.left() + s.width() - reading.getWidth() - 2);
        reading.relocate(left, Math.max(s.top() + 2, y - reading.getHeight() - 6));
    }

    private static void place(Line line, double x1, double y1, double x2, double y2) {
        line.setStartX(x1);
        line.setStartY(y1);
        line.setEndX(x2);
        line.setEndY(y2);
        line.setVisible(true);
    }

    private void hideCrosshair() {
        List.of(upright, level, reading).forEach(n -> n.setVisible(false));
    }

    @Override
    protected void layoutChildren() {
        view.relocate(0, 0);
        boolean stale = sheet.map(s -> view.getFitWidth() != getWidth() || view.getFitHeight() != getHeight())
                .orElse(true);
        if (stale) {
            redraw();
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return 420;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 760;
    }
}
