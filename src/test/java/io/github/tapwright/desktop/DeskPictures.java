package io.github.tapwright.desktop;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.input.KeyCode;

/**
 * Photographs every screen in light and dark, at the least size and at a large one, on an archive that holds something.
 * Fails if the program logged a fault of its own, or if a control has no name a screen reader could speak.
 */
final class DeskPictures {

    private DeskPictures() {}

    /** The archive's folder, the folder for pictures, width and height. */
    public static void main(String[] args) {
        Path archive = Path.of(args[0]);
        Path pictures = Path.of(args[1]);
        double width = Double.parseDouble(args[2]);
        double height = Double.parseDouble(args[3]);
        DeskScript.run(archive, pictures, hand -> {
            hand.size(width, height);
            String size = (int) width + "x" + (int) height;
            photographAll(hand, pictures, size + "-light");
            hand.press(KeyCode.CONTROL, KeyCode.D);
            photographAll(hand, pictures, size + "-dark");
            hand.press(KeyCode.CONTROL, KeyCode.D);
        });
    }

    private static void photographAll(Hand hand, Path pictures, String suffix) {
        List<String> names = hand.screenNames();
        for (int i = 0; i < names.size(); i++) {
            hand.show(i);
            choose(hand, names.get(i), i);
            hand.waitUntilStill();
            hand.requireNames(names.get(i));
            hand.photograph(pictures.resolve(names.get(i).toLowerCase(Locale.ROOT) + "-" + suffix + ".png"));
            if (names.get(i).equals("Shelf")) {
                photographForm(
                        hand, KeyCode.C, "Correct sitting", pictures.resolve("correct-sitting-" + suffix + ".png"));
                photographForm(
                        hand,
                        KeyCode.I,
                        "Correct instrument",
                        pictures.resolve("correct-instrument-" + suffix + ".png"));
            }
        }
    }

    /** What the shelf opens to correct something, with all that is known. */
    private static void photographForm(Hand hand, KeyCode letter, String title, Path picture) {
        hand.press(KeyCode.ALT, letter);
        hand.waitFor("Enter keeps, Escape leaves");
        hand.waitUntilStill();
        hand.requireNames(title);
        hand.photograph(picture);
        hand.press(KeyCode.ESCAPE);
    }

    /** An empty screen hides its faults: each is asked for something. */
    private static void choose(Hand hand, String screen, int place) {
        switch (screen) {
            case "Shelf" -> hand.openFirstSitting(place);
            case "Notes" -> {
                hand.chooseFirst("Sitting for notes or plucks");
                hand.waitUntilIdle();
                hand.press(KeyCode.F5);
                hand.waitUntilIdle();
                hand.requireChosen("Sitting for notes or plucks");
                for (int fret = 0; fret < 4; fret++) {
                    hand.press(KeyCode.RIGHT);
                }
                hand.press(KeyCode.ENTER);
            }
            case "Compare" -> {
                hand.chooseFirst("First sitting, A");
                hand.chooseFirst("Second sitting, B");
                hand.goDownUntilFilled("Differences of everything found in both");
            }
            case "Timeline" -> hand.chooseFirst("Instrument");
            case "Workshop" -> hand.chooseFirst("Instrument whose sittings are studied");
            default -> {}
        }
        hand.waitUntilIdle();
    }
}
