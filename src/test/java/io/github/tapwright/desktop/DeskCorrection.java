package io.github.tapwright.desktop;

import java.nio.file.Path;
import javafx.scene.input.KeyCode;

/**
 * A maker corrects an instrument and a sitting, by keyboard alone: from the shelf, with a slip that is refused in between, a
 * correction taken back and a form left by mistake; and from the open response. Photographs the forms in light and dark;
 * says "DONE" at the end.
 */
final class DeskCorrection {

    private final Hand hand;
    private final Keyboard keys;

    private DeskCorrection(Hand hand, Path pictures) {
        this.hand = hand;
        this.keys = new Keyboard(hand, pictures, "correct");
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
        keys.waitForCursorAt("Kind");
        keys.tabTo("Scale length (mm)");
        hand.type("650");
        keys.tabTo("Outer skin");
        hand.type("spruce");
        hand.waitFor("Will change: scale length 650 mm (was not written down)");
        keys.photograph("instrument-typed");
        hand.requireNames("Correct instrument");
        keys.tabTo("Keep the correction");
        keys.tabTo("Kind");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Corrected instrument 51: scale length 650 mm (was not written down); outer skin spruce");
        keys.tabTo("Open sitting");
    }

    private void correctHumidity() {
        hand.press(KeyCode.ALT, KeyCode.C);
        hand.waitFor("Correct sitting 1 of instrument 51");
        keys.tabTo("Relative humidity (%)");
        keys.write("460");
        hand.press(KeyCode.ENTER);
        hand.waitFor("must lie between 1 and 100, was 460");
        keys.photograph("sitting-refused");
        keys.write("46");
        hand.waitFor("Will change: relative humidity 46 % (was 45 %)");
        keys.photograph("sitting-typed");
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
        hand.waitFor("Finish the form on the shelf, or leave it, first");
        keys.tabTo("Relative humidity (%)");
        keys.write("46");
        hand.press(KeyCode.ESCAPE);
        hand.waitFor("Left as it was; what you typed is not kept");
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Will change: relative humidity 46 % (was 45 %)");
        keys.waitForCursorAt("Taken");
        keepHumidity();
    }

    private void correctFromResponse() {
        hand.focus("Sittings of the chosen instrument");
        hand.press(KeyCode.HOME);
        hand.press(KeyCode.ENTER);
        hand.waitFor("Response of 51");
        hand.waitUntilIdle();
        keys.photograph("from-response");
        hand.press(KeyCode.ALT, KeyCode.C);
        hand.waitFor("Correct sitting 1 of instrument 51");
        hand.choose("Soundhole", "covered");
        hand.waitFor("The recordings are analysed anew");
        keys.photograph("soundhole");
        hand.press(KeyCode.ALT, KeyCode.K);
        hand.waitFor("Corrected sitting 1: soundhole covered (was open). Analysed anew");
        hand.waitFor("Response of 51");
    }
}
