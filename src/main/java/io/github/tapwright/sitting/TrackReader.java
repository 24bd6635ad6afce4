package io.github.tapwright.sitting;

import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;

/** Reads a sound file once, into what the analysis needs and what the sitting keeps about it. */
final class TrackReader {

    private final NamedSource source;

    TrackReader(RecordingSource source) {
        this.source = new NamedSource(source);
    }

    /** What one reading of a file gives. */
    record Reading(TapTrack track, SoundFacts facts) {}

    /**
     * Reads a kept file, and speaks of it by the maker's name for it if it cannot be read.
     *
     * @throws io.github.tapwright.recording.UnreadableRecordingException if it holds no sound that can be read
     */
    Reading read(SoundFile file, TapSettings settings) {
        return source.read(file, recording -> {
            TapTrack track = TapTrack.read(recording.stream(), settings);
            SoundFacts facts = recording.facts(track.channelUsed(), track.durationSeconds());
            return new Reading(track, facts);
        });
    }
}
