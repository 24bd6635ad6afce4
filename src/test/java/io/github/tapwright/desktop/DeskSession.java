package io.github.tapwright.desktop;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.input.KeyCode;

/**
 * A long session in a hurry: goes round all screens again and again, opens sittings, changes light, and prints after each
 * round how much memory the whole program holds. Run by hand on an archive that holds something, in a window nobody sees:
 *
 * <p>{@code xvfb-run -a -s "-screen 0 1280x720x24" java -Xmx320m -Dprism.order=sw -cp …
 * io.github.tapwright.desktop.DeskSession ARCHIVE MINUTES}
 */
final class DeskSession {

    private DeskSession() {}

    /** The archive's folder, and how many minutes. */
    public static void main(String[] args) throws Exception {
        long began = ManagementFactory.getRuntimeMXBean().getStartTime();
        Path archive = Path.of(args[0]);
        long end = System.currentTimeMillis() + Long.parseLong(args[1]) * 60_000;
        Thread program = new Thread(() -> Launch.main(new String[] {"--archive=" + archive}), "program");
        program.setDaemon(true);
        program.start();
        try {
            Hand hand = Hand.onWindow();
            print(
                    "window after %.1f s (0.6 s of them waiting for it to settle)",
                    (System.currentTimeMillis() - began) / 1000.0);
            hand.size(1280, 720);
            for (int round = 1; System.currentTimeMillis() < end; round++) {
                goRound(hand);
                print("round %d: %s", round, memory());
            }
            if (Files.exists(archive.resolve("desk.log"))) {
                throw new AssertionError(Files.readString(archive.resolve("desk.log")));
            }
            print("DONE");
            System.exit(0);
        } catch (Throwable failure) {
            failure.printStackTrace(System.out);
            System.exit(1);
        }
    }

    private static void print(String words, Object... figures) {
        System.out.println(String.format(Locale.ROOT, words, figures));
    }

    private static void goRound(Hand hand) {
        List<String> names = hand.screenNames();
        for (int i = 0; i < names.size(); i++) {
            hand.show(i);
            if (names.get(i).equals("Shelf")) {
                openSittings(hand, i);
            } else if (names.get(i).equals("Response")) {
                lookAbout(hand);
            }
        }
        hand.press(KeyCode.CONTROL, KeyCode.D);
    }

    private static void openSittings(Hand hand, int shelf) {
        for (int n = 0; n < 3; n++) {
            hand.focus("Instruments on the shelf");
            hand.press(KeyCode.DOWN);
            hand.waitUntilIdle();
            hand.openFirstSitting(shelf);
        }
    }

    private static void lookAbout(Hand hand) {
        hand.focus("Response curves");
        for (KeyCode key : List.of(KeyCode.PLUS, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.LEFT, KeyCode.DIGIT0)) {
            hand.press(key);
        }
    }

    private static String memory() throws IOException {
        long heap = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() >> 20;
        String resident = Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(line -> line.startsWith("VmRSS") || line.startsWith("VmHWM"))
                .map(line -> line.replaceAll("\\s+", " "))
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        return "heap in use " + heap + " MB; whole program " + resident;
    }
}
