package io.github.tapwright.desktop;

import java.nio.file.Files;
import java.nio.file.Path;

/** Runs the program on an archive and lets a hand work in its window; says "DONE" if nothing went wrong and it logged no fault. */
final class DeskScript {

    private DeskScript() {}

    /** What the hand does. */
    interface Work {
        void with(Hand hand) throws Exception;
    }

    /** Ends this process, with 0 once the work is done and with 1 and a picture of what stood there if it failed. */
    static void run(Path archive, Path pictures, Work work) {
        Thread program = new Thread(() -> Launch.main(new String[] {"--archive=" + archive}), "program");
        program.setDaemon(true);
        program.start();
        try {
            work.with(Hand.onWindow());
            if (Files.exists(archive.resolve("desk.log"))) {
                throw new AssertionError(Files.readString(archive.resolve("desk.log")));
            }
            System.out.println("DONE");
            System.exit(0);
        } catch (Throwable failure) {
            failure.printStackTrace(System.out);
            Hand.onWindow().photograph(pictures.resolve("failed.png"));
            System.exit(1);
        }
    }
}
