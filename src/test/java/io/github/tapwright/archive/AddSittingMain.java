package io.github.tapwright.archive;

import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.SittingId;
import java.nio.file.Path;

/**
 * A program of its own that adds sittings until it is killed, saying each number once the sitting is kept. It ends
 * by itself only when the test that started it is gone.
 */
public final class AddSittingMain {

    /** Added to each sitting in a second transaction, so that kills also meet one that writes many rows. */
    static final TapResult RESULT = TestResults.of(100, 200, "taps-test");

    private AddSittingMain() {}

    /**
     * Runs until killed, or until nobody is left to kill it.
     *
     * @param args the archive's folder, a folder for sound files, and the first seed
     */
    public static void main(String[] args) {
        ProcessHandle test = ProcessHandle.current().parent().orElseThrow();
        Path sounds = Path.of(args[1]);
        long seed = Long.parseLong(args[2]);
        try (Workshop workshop = Workshop.in(Path.of(args[0]))) {
            // The first sitting takes long because nothing is compiled yet; the kill shall find a program at work.
            addOne(workshop, sounds, seed);
            System.out.println("ready");
            while (test.isAlive()) {
                seed += 2;
                System.out.println("kept " + addOne(workshop, sounds, seed));
            }
        }
    }

    private static SittingId addOne(Workshop workshop, Path sounds, long seed) {
        Path first = TestWav.writeRoom(sounds.resolve("first.wav"), seed);
        Path second = TestWav.writeRoom(sounds.resolve("second.wav"), seed + 1);
        SittingId id = workshop.add(first, second).id();
        NewAnalysis large = new NewAnalysis(Workshop.CLOCK.instant(), new Findings.OfTaps(RESULT));
        workshop.archive.sittings().addAnalysis(id, large);
        return id;
    }
}
