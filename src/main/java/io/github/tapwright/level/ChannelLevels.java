package io.github.tapwright.level;

import io.github.tapwright.level.loudness.LoudnessResult;
import java.util.List;
import java.util.Optional;

/**
 * Everything about one channel.
 *
 * @param soundLevels weighted levels; empty if the channel holds no sound at all
 * @param thirdOctaves levels of the third-octave bands that hold sound, lowest first
 * @param loudness in sone and phon, or why not
 */
public record ChannelLevels(Optional<SoundLevels> soundLevels, List<BandLevel> thirdOctaves, LoudnessResult loudness) {

    /** Keeps a copy of the list. */
    public ChannelLevels {
        thirdOctaves = List.copyOf(thirdOctaves);
    }
}
