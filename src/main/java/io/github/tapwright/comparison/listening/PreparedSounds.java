package io.github.tapwright.comparison.listening;

import io.github.tapwright.level.broadcast.MatchedBy;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.listening.HeardSound;
import java.util.List;

/**
 * Sounds ready to be heard side by side.
 *
 * @param matchedBy which loudness was made equal
 * @param secondsEach their common length
 * @param sounds where they come from and how far they are turned down
 * @param recordings what is played of each, before it is turned down
 */
public record PreparedSounds(
        MatchedBy matchedBy, double secondsEach, List<HeardSound> sounds, List<Recording> recordings) {

    /** Keeps copies of the lists. */
    public PreparedSounds {
        sounds = List.copyOf(sounds);
        recordings = List.copyOf(recordings);
    }
}
