package io.github.tapwright.level;

import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import java.util.List;
import java.util.Optional;

/**
 * The levels of one recording.
 *
 * @param channels one for each channel of the recording
 * @param programme loudness of all channels together in LUFS; empty if the layout of the channels is not known,
 *     with the reason in {@code warnings}
 * @param durationSeconds length of the recording
 * @param warnings what the reader must know before trusting the numbers
 * @param settings how it was measured
 * @param methodVersion version of the method that made these numbers
 */
public record LevelReport(
        List<ChannelLevels> channels,
        Optional<ProgrammeLoudness> programme,
        double durationSeconds,
        List<String> warnings,
        LevelSettings settings,
        String methodVersion) {

    /** Keeps copies of the lists. */
    public LevelReport {
        channels = List.copyOf(channels);
        warnings = List.copyOf(warnings);
    }
}
