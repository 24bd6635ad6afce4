package io.github.tapwright.desktop;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;

/**
 * A maker corrects an instrument and a sitting, by keyboard alone: from the shelf, with a slip that is refused in between, a
 * correction taken back and a form left by mistake; and from the open response. Photographs the forms in light and dark;
 * says "DONE" at the end.
 */
final class DeskCorrection {

    private static final int MOST_CONTROLS = 40;

    private final Hand hand;
    private final Path pictures;

    private DeskCorrection(Hand hand, Path pictures) {
        this.hand = hand;
        this.pictures = pictures;
    }

    /** The archive's folder, which holds an instrument with one sitting for taps, and the folder for pictures. */
    public static void main(String[] args) {
        Path archive = Path.of(args[0]);
        Path pictures = Path.of(args[1]);
        DeskScript.run(archive, pictures, hand -> {
            hand.size(1280, 720);
            new DeskCorrection(hand, pictures).correctAll();
        });
    }

    private void correctAll() {
        hand.waitFor("Instrument 51");
        hand.waitUntilIdle();
        hand.focus("Instruments on the shelf");
        correctInstrument();
        correctHumidity();
        takeBack();
        leaveAndComeBack();
        correctFromResponse();
    }

    private void correctInstrument() {
        hand.press(KeyCode.ALT, KeyCode.I);
        hand.waitFor("Correct instrument 51");
        waitForCursorAt("Kind");
        tabTo("Scale length (mm)");
        hand.type("650");
        tabTo("Outer skin");
        hand.type("spruce");
        hand.waitFor("Will change: scale length 650 mm (was not written down)");
        photograph("instrument-typed");
        hand.requireNames("Correct instrument");
        tabTo("Keep the correction");
        tabTo("Kind");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Corrected instrument 51: scale length 650 mm (was not written down); outer skin spruce");
        tabTo("Open sitting");
    }

    private void correctHumidity() {
        hand.press(KeyCode.ALT, KeyCode.C);
        hand.waitFor("Correct sitting 1 of instrument 51");
        tabTo("Relative humidity (%)");
        write("460");
        hand.press(KeyCode.ENTER);
        hand.waitFor("must lie between 1 and 100, was 460");
        photograph("sitting-refused");
        write("46");
        hand.waitFor("Will change: relative humidity 46 % (was 45 %)");
        photograph("sitting-typed");
        hand.requireNames("Correct sitting");
        keepHumidity();
    }

    private void keepHumidity() {
        hand.press(KeyCode.ENTER);
        hand.waitFor("Corrected sitting 1: relative humidity 46 % (was 45 %)");
        hand.waitFor("46 % RH");
    }

    private void takeBack() {
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Sitting 1 is written down as it was before");
        hand.waitFor("45 % RH");
    }

    private void leaveAndComeBack() {
        hand.press(KeyCode.ALT, KeyCode.C);
        hand.waitFor("Correct sitting 1 of instrument 51");
        hand.press(KeyCode.CONTROL, KeyCode.N);
        hand.waitFor("Keep the correction on the shelf, or leave it, first");
        tabTo("Relative humidity (%)");
        write("46");
        hand.press(KeyCode.ESCAPE);
        hand.waitFor("Left as it was; what you typed is not kept");
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Will change: relative humidity 46 % (was 45 %)");
        waitForCursorAt("Taken");
        keepHumidity();
    }

    private void correctFromResponse() {
        hand.focus("Sittings of the chosen instrument");
        hand.press(KeyCode.HOME);
        hand.press(KeyCode.ENTER);
        hand.waitFor("Response of 51");
        hand.waitUntilIdle();
        photograph("from-response");
        hand.press(KeyCode.ALT, KeyCode.C);
        hand.waitFor("Correct sitting 1 of instrument 51");
        hand.choose("Soundhole", "covered");
        hand.waitFor("The recordings are analysed anew");
        photograph("soundhole");
        hand.press(KeyCode.ALT, KeyCode.K);
        hand.waitFor("Corrected sitting 1: soundhole covered (was open). Analysed anew");
        hand.waitFor("Response of 51");
    }

    private void write(String text) {
        hand.press(KeyCode.CONTROL, KeyCode.A);
        hand.type(text);
    }

    private void waitForCursorAt(String accessibleText) {
        Hand.until("the cursor at “" + accessibleText + "”", () -> isAt(accessibleText));
    }

    private boolean isAt(String accessibleText) {
        return accessibleText.equals(hand.focused().map(Node::getAccessibleText).orElse(""));
    }

    /** By Tab alone, as somebody without a mouse gets there. */
    private void tabTo(String accessibleText) {
        for (int i = 0; i < MOST_CONTROLS; i++) {
            if (isAt(accessibleText)) {
                return;
            }
            hand.press(KeyCode.TAB);
        }
        throw new AssertionError("Tab does not lead to “" + accessibleText + "”");
    }

    private void photograph(String name) {
        hand.waitUntilIdle();
        hand.photograph(pictures.resolve("correct-" + name + "-light.png"));
        hand.press(KeyCode.CONTROL, KeyCode.D);
        Hand.rest(300);
        hand.photograph(pictures.resolve("correct-" + name + "-dark.png"));
        hand.press(KeyCode.CONTROL, KeyCode.D);
    }
}
