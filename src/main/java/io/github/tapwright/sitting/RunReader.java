package io.github.tapwright.sitting;

import io.github.tapwright.note.run.RunTrack;
import io.github.tapwright.recording.Excerpts;
import io.github.tapwright.recording.Recording;
import java.nio.file.Path;
import java.util.List;

/** Reads a recording of many plucks twice: to find where each begins, and to hand each out by itself. */
final class RunReader {

    private final NamedSource source;

    RunReader(RecordingSource source) {
        this.source = new NamedSource(source);
    }

    /** What is done with each pluck. */
    @FunctionalInterface
    interface Taker {

        /** Takes a pluck that began at a time of the recording. */
        void take(double attackSeconds, Recording excerpt);
    }

    /**
     * Hands out the plucks of a recording in order.
     *
     * @param file the recording
     * @param longestSeconds at most so much of each
     * @param taker what is done with each
     * @return where the file departed from what its header promised
     * @throws io.github.tapwright.recording.UnreadableRecordingException if it holds no sound that can be read
     */
    List<String> each(Path file, double longestSeconds, Taker taker) {
        String name = file.toString();
        Heard heard = source.read(
                file,
                name,
                recording -> new Heard(
                        RunTrack.read(recording.stream()), recording.notices().get()));
        return source.read(file, name, recording -> {
            Excerpts.each(
                    recording.stream(),
                    heard.track.spans(longestSeconds),
                    (i, excerpt) -> taker.take(heard.track.attacksSeconds().get(i), excerpt));
            return heard.notices;
        });
    }

    /** Notices are complete only where the sound was read to its end. */
    private record Heard(RunTrack track, List<String> notices) {}
}
