package io.github.tapwright.desktop;

import java.nio.file.Path;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;

/**
 * A maker's first visit, by hand: puts an instrument on the shelf, taps it before the microphone, keeps the sitting, names
 * a resonance, sets a strike aside; taps it once more, compares the two sittings and has a report of that written as PDF.
 * Runs in a process of its own, which finds screen and microphone in its environment; says "PLAY" when it wants to hear
 * taps, and "DONE" at the end.
 */
final class DeskVisit {

    private static final int GOOD_TAPS = 5;

    private DeskVisit() {}

    /** The archive's folder, the folder for pictures, and the report to write. */
    public static void main(String[] args) {
        Path archive = Path.of(args[0]);
        Path pictures = Path.of(args[1]);
        Path report = Path.of(args[2]);
        DeskScript.run(archive, pictures, hand -> visit(hand, pictures, report));
    }

    private static void visit(Hand hand, Path pictures, Path report) {
        hand.size(1280, 720);
        addInstrument(hand);
        prepare(hand);
        record(hand, pictures);
        keep(hand);
        nameResonance(hand);
        setStrikeAside(hand);
        hand.photograph(pictures.resolve("visit-response.png"));
        recordAgain(hand);
        compare(hand);
        hand.photograph(pictures.resolve("visit-compare.png"));
        report(hand, report);
        hand.photograph(pictures.resolve("visit-report.png"));
    }

    private static void addInstrument(Hand hand) {
        hand.waitFor("Add an instrument");
        hand.press(KeyCode.CONTROL, KeyCode.N);
        hand.focus("Shop number");
        hand.type("41");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Instrument 41 stands on the shelf");
    }

    private static void prepare(Hand hand) {
        hand.click("New sitting");
        hand.waitFor("Body taps");
        hand.focus("Relative humidity (%)");
        hand.type("46");
        hand.focus("Temperature");
        hand.type("20.5");
    }

    private static void record(Hand hand, Path pictures) {
        hand.click("Record");
        hand.waitFor("Recording ");
        System.out.println("PLAY");
        Hand.until("five good taps", () -> goodTaps(hand) >= GOOD_TAPS);
        hand.photograph(pictures.resolve("visit-recording.png"));
        hand.press(KeyCode.ALT, KeyCode.U);
        hand.waitFor("Set the last strike aside");
        int before = goodTaps(hand);
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        Hand.until("the strike taken back", () -> goodTaps(hand) > before);
        Hand.until("a named resonance", () -> hand.reads("main top") || hand.reads("main air"));
        hand.press(KeyCode.ALT, KeyCode.S);
        hand.waitFor("Recorded ");
        hand.photograph(pictures.resolve("visit-recorded.png"));
    }

    private static int goodTaps(Hand hand) {
        return Hand.onScreen(() -> hand.shown()
                .filter(n -> "Strikes so far".equals(n.getAccessibleText()))
                .map(n -> (TableView<?>) n)
                .mapToInt(t -> (int) t.getItems().stream()
                        .filter(s -> ((io.github.tapwright.tap.Strike) s).used())
                        .count())
                .findFirst()
                .orElse(0));
    }

    private static void keep(Hand hand) {
        hand.press(KeyCode.ALT, KeyCode.K);
        hand.waitFor("Response of 41");
        hand.waitFor("main top");
    }

    private static void nameResonance(Hand hand) {
        hand.focus("Resonances of the sitting");
        hand.press(KeyCode.DOWN);
        hand.focus("Name of the chosen resonance");
        hand.press(KeyCode.CONTROL, KeyCode.A);
        hand.type("low one");
        hand.press(KeyCode.ENTER);
        hand.waitFor("Named the resonance");
        hand.waitFor("low one");
        hand.click("Undo");
        Hand.until("the old name", () -> !hand.reads("low one"));
    }

    private static void setStrikeAside(Hand hand) {
        hand.clickText("Strikes");
        hand.focus("Strikes of the sitting");
        hand.press(KeyCode.DOWN);
        hand.press(KeyCode.ENTER);
        hand.waitFor("Set the strike aside and analysed anew");
        hand.waitFor("set aside by the maker");
    }

    /** The same again, as makers do to learn what their set-up is worth. */
    private static void recordAgain(Hand hand) {
        hand.press(KeyCode.CONTROL, KeyCode.DIGIT1);
        hand.waitUntilIdle();
        prepare(hand);
        hand.click("Record");
        hand.waitFor("Recording ");
        System.out.println("PLAY");
        Hand.until("five good taps", () -> goodTaps(hand) >= GOOD_TAPS);
        hand.press(KeyCode.ALT, KeyCode.S);
        hand.waitFor("Recorded ");
        keep(hand);
    }

    private static void compare(Hand hand) {
        hand.press(KeyCode.CONTROL, KeyCode.DIGIT5);
        hand.waitUntilIdle();
        hand.choose("First sitting, A", "(sitting 1)");
        hand.choose("Second sitting, B", "(sitting 2)");
        hand.waitFor("cannot tell");
    }

    private static void report(Hand hand, Path report) {
        hand.press(KeyCode.ALT, KeyCode.R);
        hand.waitFor("Make a report");
        hand.waitUntilIdle();
        hand.press(KeyCode.ALT, KeyCode.M);
        hand.answer("Where shall the report be written?", report);
        hand.waitFor("Wrote " + report);
    }
}
