package io.github.tapwright.sitting.listening;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.level.broadcast.MatchedBy;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What is settled before the first question of a blind listening, and does not change any more.
 *
 * @param startedAt when
 * @param seed the order of the questions follows from it
 * @param trialCount how many questions, 10 to 20; settled beforehand, because one who may stop when it looks good
 *     always wins
 * @param matchedBy which loudness was made equal
 * @param secondsEach how much of each sound is played
 * @param sounds the sounds, two or more
 * @param listener who listens; empty if nobody wrote it down
 * @param playedThrough headphones or loudspeaker; empty if nobody wrote it down
 */
public record NewListening(
        Instant startedAt,
        long seed,
        int trialCount,
        MatchedBy matchedBy,
        double secondsEach,
        List<HeardSound> sounds,
        Optional<String> listener,
        Optional<String> playedThrough) {

    /** Fewest questions: with less, even a good ear can hardly prove itself. */
    public static final int FEWEST_TRIALS = 10;

    /** Most questions: with more, ears tire. Common practice, no source. */
    public static final int MOST_TRIALS = 20;

    /** Keeps a copy of the list and refuses what is no such test. */
    public NewListening {
        sounds = List.copyOf(sounds);
        if (sounds.size() < 2) {
            throw new RefusedEntryException("listening needs two sounds at least; choose another one");
        }
        if (trialCount < FEWEST_TRIALS || trialCount > MOST_TRIALS) {
            throw new RefusedEntryException(
                    "a listening has " + FEWEST_TRIALS + " to " + MOST_TRIALS + " questions, not " + trialCount);
        }
    }
}
