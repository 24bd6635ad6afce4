package io.github.tapwright.desktop;

import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.input.KeyCode;

/**
 * Studies of taps, notes and plucks on the Workshop screen, by keyboard alone: three sittings ticked, worked out, kept, taken back, kept again,
 * forgotten. Photographs what stands there in light and dark; says "DONE" at the end.
 */
final class DeskStudy {

    private static final String LIST = "Sittings to study";

    private final Hand hand;
    private final Path pictures;

    private DeskStudy(Hand hand, Path pictures) {
        this.hand = hand;
        this.pictures = pictures;
    }

    /** The archive's folder, which holds three sittings of every kind, and the folder for pictures. */
    public static void main(String[] args) {
        Path archive = Path.of(args[0]);
        Path pictures = Path.of(args[1]);
        DeskScript.run(archive, pictures, hand -> {
            hand.size(1280, 720);
            hand.press(KeyCode.CONTROL, KeyCode.DIGIT9);
            hand.waitFor("A study of sittings you have");
            hand.waitUntilIdle();
            hand.choose("Instrument whose sittings are studied", "51");
            new DeskStudy(hand, pictures).studyAll();
        });
    }

    private void studyAll() {
        study("notes", "Playing again moves, as one standard deviation, early decays by");
        hand.press(KeyCode.CONTROL, KeyCode.Z);
        hand.waitFor("No study of notes is kept yet");
        study("notes", "Playing again moves, as one standard deviation, early decays by");
        study("plucks", "Playing again moves, as one standard deviation, levels by");
        study("taps", "Setting up again moves figures by");
        hand.press(KeyCode.ALT, KeyCode.N);
        hand.waitFor("The study of notes kept: 3 sittings of instrument 51");
        hand.press(KeyCode.ALT, KeyCode.F);
        hand.waitFor("Forgotten; no sitting was deleted");
        hand.waitFor("No study of notes is kept yet");
    }

    /** Alt with its letter chooses the kind, Space ticks. */
    private void study(String kind, String says) {
        hand.press(KeyCode.ALT, KeyCode.getKeyCode(kind.substring(0, 1).toUpperCase(Locale.ROOT)));
        hand.waitUntilIdle();
        hand.focus(LIST);
        hand.press(KeyCode.HOME);
        for (int line = 0; line < 3; line++) {
            hand.press(KeyCode.SPACE);
            hand.press(KeyCode.DOWN);
        }
        hand.press(KeyCode.ALT, KeyCode.W);
        hand.waitFor("Not kept: 3 ");
        hand.waitFor(says);
        photograph(kind + "-tried");
        hand.requireNames("Workshop");
        hand.press(KeyCode.ALT, KeyCode.S);
        hand.waitFor("Kept: comparisons of " + kind + " rest on this study from now on");
        hand.waitFor("The study of " + kind + " kept: 3 ");
        photograph(kind + "-kept");
    }

    private void photograph(String name) {
        hand.waitUntilIdle();
        hand.photograph(pictures.resolve("workshop-" + name + "-light.png"));
        hand.press(KeyCode.CONTROL, KeyCode.D);
        Hand.rest(300);
        hand.photograph(pictures.resolve("workshop-" + name + "-dark.png"));
        hand.press(KeyCode.CONTROL, KeyCode.D);
    }
}
