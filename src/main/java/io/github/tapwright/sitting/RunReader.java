package io.github.tapwright.sitting;

import io.github.tapwright.note.run.RunTrack;
import io.github.tapwright.recording.Excerpts;
import io.github.tapwright.recording.Recording;

/** Reads a recording of many plucks twice: to find where each begins, and to hand each out by itself. */
final class RunReader {

    private final NamedSource source;

    RunReader(RecordingSource source) {
        this.source = new NamedSource(source);
    }

    /** What is done with each pluck. */
    @FunctionalInterface
    interface Taker {

        /** Takes a pluck that began at a time of the recording, in the one channel that was listened to. */
        void take(double attackSeconds, Recording excerpt, int channel);
    }

    /**
     * Hands out the plucks of a recording in order, from the channel that holds the most sound.
     *
     * @param file the recording
     * @param longestSeconds at most so much of each
     * @param taker what is done with each
     * @return what reading the file showed
     * @throws io.github.tapwright.recording.UnreadableRecordingException if it holds no sound that can be read
     */
    SoundFacts each(SoundFile file, double longestSeconds, Taker taker) {
        Heard heard = source.read(file, recording -> {
            RunTrack track = RunTrack.read(recording.stream());
            return new Heard(track, recording.facts(track.channelUsed(), track.durationSeconds()));
        });
        RunTrack track = heard.track;
        return source.read(file, recording -> {
            Excerpts.each(
                    recording.stream(),
                    track.spans(longestSeconds),
                    (i, excerpt) -> taker.take(
                            track.attacksSeconds().get(i), excerpt.only(track.channelUsed()), track.channelUsed()));
            return heard.facts;
        });
    }

    /** Facts are complete only where the sound was read to its end. */
    private record Heard(RunTrack track, SoundFacts facts) {}
}
