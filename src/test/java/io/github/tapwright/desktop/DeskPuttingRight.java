package io.github.tapwright.desktop;

import java.nio.file.Path;
import javafx.scene.input.KeyCode;

/**
 * A maker puts right what was not meant, by keyboard alone: sets a sitting aside and takes it back, from the shelf and from the
 * response; moves it to another instrument and back; withdraws a calibration and measures anew what rested on it.
 * Photographs what stands there in light and dark; says "DONE" at the end.
 */
final class DeskPuttingRight {

    private static final String SITTINGS = "Sittings of the chosen instrument";

    private final Hand hand;
    private final Keyboard keys;

    private DeskPuttingRight(Hand hand, Path pictures) {
        this.hand = hand;
        this.keys = new Keyboard(hand, pictures, "right");
    }

    /** The archive's folder, and the folder for pictures. */
    public static void main(String[] args) {
        Path archive = Path.of(args[0]);
        Path pictures = Path.of(args[1]);
        DeskScript.run(archive, pictures, hand -> {
            hand.size(1280, 720);
            hand.waitFor("Instrument 51");
            hand.waitUntilIdle();
            new DeskPuttingRight(hand, pictures).putAllRight();
        });
    }

    private void putAllRight() {
        setAside();
        setAsideOnTheResponse();
        move();
        withdraw();
        analyseAnew();
    }

    private void setAside() {
        hand.focus(SITTINGS);
        hand.press(KeyCode.HOME);
        hand.press(KeyCode.ALT, KeyCode.D);
        hand.waitFor("Set aside sitting 1 of instrument 51, for taps");
        keys.waitForCursorAt("Reason");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Not kept: there is no reason");
        hand.type("the cover had slipped and lay half over the soundhole while the guitar was being tapped");
        keys.photograph("reason");
        hand.requireNames("Set aside");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Sitting 1 is set aside: the cover had slipped");
        keys.photograph("set-aside");
        hand.requireNames("Shelf with a sitting set aside");
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Sitting 1 is in use again");
    }

    /** Set aside where it is looked at, used again, and set aside again by Undo. */
    private void setAsideOnTheResponse() {
        hand.focus(SITTINGS);
        hand.press(KeyCode.END);
        hand.press(KeyCode.ENTER);
        hand.waitFor("Response of 51");
        hand.waitUntilIdle();
        hand.press(KeyCode.ALT, KeyCode.D);
        keys.waitForCursorAt("Reason");
        hand.type("the microphone fell over");
        keys.tabTo("Set aside");
        hand.press(KeyCode.ENTER);
        hand.waitFor("set aside: the microphone fell over");
        hand.waitFor("Response of 51");
        keys.photograph("response-set-aside");
        hand.requireNames("Response of a sitting set aside");
        hand.press(KeyCode.ALT, KeyCode.U);
        hand.waitFor("Sitting 2 is in use again");
        Hand.until("the mark to go", () -> !hand.reads("set aside: the microphone"));
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Sitting 2 is set aside: the microphone fell over");
        Hand.until("the mark to come back", () -> hand.reads("strung, set aside: the microphone fell over"));
    }

    /** From the response, whose heading follows; taken back there. */
    private void move() {
        hand.press(KeyCode.ALT, KeyCode.C);
        hand.waitFor("Correct sitting 2 of instrument 51, for taps");
        keys.tabTo("Instrument");
        hand.press(KeyCode.DOWN);
        hand.waitFor("Will change: instrument 52 (was 51). Recordings, results and names go with it");
        keys.photograph("move");
        hand.requireNames("Correct sitting");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Corrected sitting 2: instrument 52 (was 51)");
        hand.waitFor("Response of 52");
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Sitting 2 is written down as it was before");
        hand.waitFor("Response of 51");
    }

    /** On the Workshop screen: withdrawn, taken back, withdrawn again; what rested on it is measured by the other one. */
    private void withdraw() {
        hand.press(KeyCode.CONTROL, KeyCode.DIGIT9);
        hand.waitUntilIdle();
        keys.tabTo("Spreads and calibrations");
        hand.press(KeyCode.RIGHT);
        hand.waitFor("The levels of sitting 3 rest on it");
        keys.tabTo("Calibrations of the archive");
        keys.tabTo("What is wrong with it");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Withdrawing calibration 1: there is no reason");
        hand.type("114 was typed and the calibrator makes 94 as its label says");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Calibration 1 is withdrawn: 114 was typed");
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Calibration 1 is in use again");
        hand.waitUntilIdle();
        keys.tabTo("What is wrong with it");
        hand.type("114 was typed and the calibrator makes 94 as its label says");
        hand.press(KeyCode.ALT, KeyCode.D);
        hand.waitFor("no sound pressure levels until they are analysed anew");
        keys.photograph("withdrawn");
        hand.requireNames("Workshop with calibrations");
        hand.choose("Levels measured by", "calibration 2");
        hand.press(KeyCode.ALT, KeyCode.A);
        hand.waitFor("Analysed sitting 3 anew: 6 plucks in dB re 20 µPa by calibration 2");
        hand.waitFor("No sitting's levels rest on it");
        keys.photograph("measured-anew");
        hand.press(KeyCode.ALT, KeyCode.U);
        hand.waitFor("Calibration 1 is in use again");
    }

    /** From the shelf, by the first calibration, which is in use again; taken back while its notes are looked at. */
    private void analyseAnew() {
        hand.press(KeyCode.CONTROL, KeyCode.DIGIT1);
        hand.waitUntilIdle();
        hand.focus("Instruments on the shelf");
        hand.press(KeyCode.END);
        hand.waitFor("Instrument 52");
        hand.press(KeyCode.ALT, KeyCode.W);
        hand.waitFor("Analyse anew sitting 3 of instrument 52, for plucks");
        keys.waitForCursorAt("Levels measured by");
        hand.choose("Levels measured by", "calibration 1, 2026");
        keys.photograph("analyse-anew");
        hand.requireNames("Analyse anew");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Analysed sitting 3 anew: 6 plucks in dB re 20 µPa by calibration 1");
        hand.focus(SITTINGS);
        hand.press(KeyCode.ENTER);
        hand.waitFor("Levels are in dB re 20 µPa by calibration 1");
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("Levels are in dB re 20 µPa by calibration 2");
        keys.photograph("notes-measured-as-before");
    }
}
