package io.github.tapwright.demo;

import io.github.tapwright.demo.DemoSitting.Room;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.FingerboardRun;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * One invented visit with a run of notes up one string.
 *
 * @param number continues the sittings', also the seed of all chance in it
 * @param instrument who came
 * @param taken day and time in the workshop
 * @param stage how far it had come
 * @param room the air
 * @param run what was played
 * @param note the maker's word
 */
record DemoRun(
        int number,
        DemoInstrument instrument,
        String taken,
        DemoStage stage,
        Room room,
        FingerboardRun run,
        String note) {

    private static final double SECONDS_EACH = 2.3;

    /** A string from the open note to a fret, one note of it dead. */
    static FingerboardRun upTheString(int string, int highestFret, int deadFret, double share) {
        return new FingerboardRun(
                IntStream.rangeClosed(0, highestFret)
                        .mapToObj(fret -> new Fret(string, fret))
                        .toList(),
                SECONDS_EACH,
                Map.of(new Fret(string, deadFret), share));
    }

    String file() {
        return "%s-%s-notes.flac".formatted(instrument.shopNumber(), taken.substring(0, 10));
    }

    /** Samples as whole numbers of 24 bits. */
    int[] quantised() {
        return DemoRecording.quantised(run.recording(DemoRecording.RATE_HZ, Chance.seeded(number)));
    }
}
