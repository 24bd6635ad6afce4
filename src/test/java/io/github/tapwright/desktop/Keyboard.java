package io.github.tapwright.desktop;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;

/**
 * Working in the window as somebody without a mouse does, with photographs on the way.
 *
 * @param hand what presses the keys
 * @param pictures the folder for photographs
 * @param about what their names begin with
 */
record Keyboard(Hand hand, Path pictures, String about) {

    private static final int MOST_CONTROLS = 40;

    /** Takes the place of what stands in the field. */
    void write(String text) {
        hand.press(KeyCode.CONTROL, KeyCode.A);
        hand.type(text);
    }

    void waitForCursorAt(String accessibleText) {
        Hand.until("the cursor at “" + accessibleText + "”", () -> isAt(accessibleText));
    }

    private boolean isAt(String accessibleText) {
        return accessibleText.equals(hand.focused().map(Node::getAccessibleText).orElse(""));
    }

    /** By Tab alone. */
    void tabTo(String accessibleText) {
        for (int i = 0; i < MOST_CONTROLS; i++) {
            if (isAt(accessibleText)) {
                return;
            }
            hand.press(KeyCode.TAB);
        }
        throw new AssertionError("Tab does not lead to “" + accessibleText + "”");
    }

    /** In light and in dark. */
    void photograph(String name) {
        hand.waitUntilIdle();
        hand.photograph(pictures.resolve(about + "-" + name + "-light.png"));
        hand.press(KeyCode.CONTROL, KeyCode.D);
        Hand.rest(300);
        hand.photograph(pictures.resolve(about + "-" + name + "-dark.png"));
        hand.press(KeyCode.CONTROL, KeyCode.D);
    }
}
