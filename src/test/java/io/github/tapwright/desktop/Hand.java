package io.github.tapwright.desktop;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Spinner;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;

/** A hand on mouse and keyboard of a real window, and an eye on what it shows. */
final class Hand {

    private static final long PATIENCE_SECONDS = 30;
    private static final long LONGEST_UNREST_NANOS = 1_500_000_000L;

    private final Stage stage;

    private Hand(Stage stage) {
        this.stage = stage;
    }

    /** Waits for the program's window. */
    static Hand onWindow() {
        until("the toolkit", Hand::toolkitRuns);
        until("a window", () -> onScreen(() -> Window.getWindows().stream().anyMatch(w -> w.isShowing())));
        Stage stage = (Stage) onScreen(() -> Window.getWindows().get(0));
        until("the keyboard", () -> onScreen(stage::isFocused));
        rest(600);
        return new Hand(stage);
    }

    private static boolean toolkitRuns() {
        try {
            Platform.runLater(() -> {});
            return true;
        } catch (IllegalStateException e) {
            return false;
        }
    }

    /** Runs on the screen's thread and brings what that gave. */
    static <T> T onScreen(Supplier<T> look) {
        CompletableFuture<T> result = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                result.complete(look.get());
            } catch (RuntimeException | AssertionError e) {
                result.completeExceptionally(e);
            }
        });
        try {
            return result.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** Waits until something holds, and fails in words if it never does. */
    static void until(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain for " + what);
            }
            rest(40);
        }
    }

    static void rest(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    void size(double width, double height) {
        onScreen(() -> {
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(width);
            stage.setHeight(height);
            return true;
        });
        rest(400);
    }

    /** All that is shown, from the back to the front. */
    Stream<Node> shown() {
        return all(stage.getScene().getRoot()).filter(n -> n.isVisible() && n.getScene() != null);
    }

    private static Stream<Node> all(Node node) {
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(Hand::all))
                : Stream.of(node);
    }

    /** Something by the name a screen reader speaks. */
    Optional<Node> find(String accessibleText) {
        return onScreen(() -> shown().filter(n -> accessibleText.equals(n.getAccessibleText()))
                .findFirst());
    }

    Node the(String accessibleText) {
        until("“" + accessibleText + "”", () -> find(accessibleText).isPresent());
        return find(accessibleText).orElseThrow();
    }

    /** Whether a text stands somewhere on the screen. */
    boolean reads(String part) {
        return onScreen(() -> shown().anyMatch(n ->
                n instanceof Labeled l && l.getText() != null && l.getText().contains(part)));
    }

    void waitFor(String part) {
        until("the words “" + part + "”", () -> reads(part));
    }

    /** Clicks on something by its spoken name. */
    void click(String accessibleText) {
        click(the(accessibleText), 1);
    }

    /** Clicks on a text, such as that of a tab. */
    void clickText(String text) {
        until("the words “" + text + "”", () -> labelled(text).isPresent());
        click(labelled(text).orElseThrow(), 1);
    }

    private Optional<Node> labelled(String text) {
        return onScreen(() -> shown().filter(n -> n instanceof Labeled l && text.equals(l.getText()))
                .findFirst());
    }

    void click(Node node, int times) {
        Point2D place = onScreen(() -> {
            Bounds bounds = node.localToScreen(node.getBoundsInLocal());
            return new Point2D(bounds.getCenterX(), bounds.getCenterY());
        });
        onScreen(() -> {
            Robot robot = new Robot();
            robot.mouseMove(place);
            for (int i = 0; i < times; i++) {
                robot.mouseClick(MouseButton.PRIMARY);
            }
            return true;
        });
        rest(150);
    }

    /** Presses keys together, the last of them being the one that matters. */
    void press(KeyCode... keys) {
        onScreen(() -> {
            Robot robot = new Robot();
            for (KeyCode key : keys) {
                robot.keyPress(key);
            }
            for (int i = keys.length - 1; i >= 0; i--) {
                robot.keyRelease(keys[i]);
            }
            return true;
        });
        rest(150);
    }

    /** Types lower-case letters, digits and spaces where the cursor stands. */
    void type(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            KeyCode key = switch (letter) {
                case ' ' -> KeyCode.SPACE;
                case '.' -> KeyCode.PERIOD;
                default -> KeyCode.getKeyCode(String.valueOf(letter).toUpperCase(Locale.ROOT));
            };
            press(key);
        }
    }

    /** Chooses the first of several by keyboard, where nothing is chosen yet. */
    void chooseFirst(String accessibleText) {
        choose(accessibleText, "");
    }

    /** Goes down a choice by keyboard until it shows what is wanted. */
    void choose(String accessibleText, String part) {
        focus(accessibleText);
        @SuppressWarnings("unchecked") // a choice of whatever it is
        ComboBox<Object> choice = (ComboBox<Object>) the(accessibleText);
        int lines = onScreen(() -> choice.getItems().size());
        for (int i = 0; i < lines && !shows(choice, part); i++) {
            press(KeyCode.DOWN);
        }
        if (!shows(choice, part)) {
            throw new AssertionError(accessibleText + " does not offer “" + part + "”");
        }
    }

    /** Fails if nothing is chosen there. */
    void requireChosen(String accessibleText) {
        ComboBox<?> choice = (ComboBox<?>) the(accessibleText);
        if (onScreen(() -> choice.getValue() == null)) {
            throw new AssertionError(accessibleText + " has forgotten what was chosen");
        }
    }

    /** Goes down the choice where the cursor stands, unless a table is filled already, until it is; fails if it never is. */
    void goDownUntilFilled(String accessibleText) {
        TableView<?> table = (TableView<?>) the(accessibleText);
        waitUntilIdle();
        until("lines in the table “" + accessibleText + "”", () -> {
            boolean filled = onScreen(() -> !table.getItems().isEmpty());
            if (!filled) {
                press(KeyCode.DOWN);
                waitUntilIdle();
            }
            return filled;
        });
    }

    private static boolean shows(ComboBox<Object> choice, String part) {
        return onScreen(() -> choice.getValue() != null
                && choice.getConverter().toString(choice.getValue()).contains(part));
    }

    /** Types a file's path into the system's own window, which asks for one; the program's hand does not reach there. */
    void answer(String title, Path file) {
        command("xdotool", "search", "--sync", "--onlyvisible", "--name", title, "windowfocus", "--sync");
        rest(300);
        command("xdotool", "key", "ctrl+a");
        command("xdotool", "type", "--delay", "20", file.toString());
        command("xdotool", "key", "Return");
    }

    private static void command(String... words) {
        try {
            Process process =
                    new ProcessBuilder(words).redirectErrorStream(true).start();
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new AssertionError(String.join(" ", words) + ": "
                        + new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    void focus(String accessibleText) {
        Node node = the(accessibleText);
        onScreen(() -> {
            node.requestFocus();
            return true;
        });
        rest(100);
    }

    /** Where the cursor is. */
    Optional<Node> focused() {
        return onScreen(() -> Optional.ofNullable(stage.getScene().getFocusOwner()));
    }

    /** Shows a screen, counted from the top, 0 for the first. */
    void show(int screen) {
        press(KeyCode.CONTROL, KeyCode.getKeyCode(Integer.toString(screen + 1)));
        waitUntilIdle();
    }

    /** Opens the first sitting of the instrument chosen on the shelf, and comes back. */
    void openFirstSitting(int shelf) {
        focus("Sittings of the chosen instrument");
        press(KeyCode.HOME);
        press(KeyCode.ENTER);
        waitFor("Response of");
        waitUntilIdle();
        show(shelf);
    }

    /** What stands on the buttons of the screens, from the top. */
    List<String> screenNames() {
        return onScreen(() -> shown().filter(n -> n.getStyleClass().contains("screen-button"))
                .map(Node::getAccessibleText)
                .toList());
    }

    /** Waits until nothing is being done in the background. */
    void waitUntilIdle() {
        rest(200);
        until("the end of the work", () -> find("Progress").isEmpty());
    }

    /** Fails if something one can use has no name a screen reader could speak. */
    void requireNames(String screen) {
        List<String> nameless = onScreen(() -> shown().filter(n -> n instanceof ButtonBase
                        || n instanceof TextInputControl
                        || n instanceof ComboBoxBase
                        || n instanceof ListView
                        || n instanceof TableView)
                .filter(n -> !isPartOfAnother(n))
                .filter(n ->
                        n.getAccessibleText() == null || n.getAccessibleText().isBlank())
                .filter(n -> !(n instanceof Labeled l)
                        || l.getText() == null
                        || l.getText().isBlank())
                .map(Node::toString)
                .toList());
        if (!nameless.isEmpty()) {
            throw new AssertionError("on " + screen + " these have no name: " + nameless);
        }
    }

    /** The editor and the arrow of a choice belong to the choice, which has the name. */
    private static boolean isPartOfAnother(Node node) {
        for (Parent above = node.getParent(); above != null; above = above.getParent()) {
            if (above instanceof ComboBoxBase || above instanceof Spinner) {
                return true;
            }
        }
        return false;
    }

    /** Waits until two looks at the window show the same, and not for ever, because a meter never rests. */
    void waitUntilStill() {
        int[] before = pixels(picture());
        for (long end = System.nanoTime() + LONGEST_UNREST_NANOS; System.nanoTime() < end; ) {
            rest(250);
            int[] now = pixels(picture());
            if (Arrays.equals(before, now)) {
                return;
            }
            before = now;
        }
    }

    private WritableImage picture() {
        return onScreen(() -> stage.getScene().snapshot(null));
    }

    private static int[] pixels(WritableImage image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        return pixels;
    }

    /** Keeps what the window shows as a picture. */
    void photograph(Path file) {
        WritableImage image = picture();
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(0, 0, width, height, pixels(image), 0, width);
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
