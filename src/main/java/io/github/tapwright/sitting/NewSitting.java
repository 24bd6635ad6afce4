package io.github.tapwright.sitting;

import io.github.tapwright.instrument.ShopNumber;
import java.time.Instant;
import java.util.List;

/**
 * A sitting about to be kept.
 *
 * @param instrument whose sitting it was
 * @param takenAt when the recordings were made
 * @param addedAt when it is added
 * @param conditions what was written down
 * @param recordings the recordings in order, each with its safe copy; at least one
 * @param analysis what was found in them
 */
public record NewSitting(
        ShopNumber instrument,
        Moment takenAt,
        Instant addedAt,
        Conditions conditions,
        List<NewRecording> recordings,
        NewAnalysis analysis) {

    /** Keeps a copy of the list and refuses a sitting without recordings. */
    public NewSitting {
        recordings = List.copyOf(recordings);
        if (recordings.isEmpty()) {
            throw new IllegalArgumentException("a sitting needs a recording");
        }
    }

    /**
     * A recording about to be kept.
     *
     * @param staged its safe copy
     * @param facts what reading it showed
     */
    public record NewRecording(StagedOriginal staged, SoundFacts facts) {}
}
