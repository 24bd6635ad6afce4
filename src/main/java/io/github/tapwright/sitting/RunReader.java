package io.github.tapwright.sitting;

import io.github.tapwright.note.run.RunTrack;
import io.github.tapwright.recording.Excerpts;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleStream;
import java.util.Iterator;
import java.util.function.Consumer;

/** Reads a recording of many plucks twice: to find where each begins, and to hand each out by itself. */
final class RunReader {

    private final NamedSource source;

    RunReader(RecordingSource source) {
        this.source = new NamedSource(source);
    }

    /**
     * One pluck cut out of its run.
     *
     * @param attackSeconds when it began
     * @param sound from just before its attack on, the one channel that was listened to
     * @param channel which channel that is, from 0
     */
    record Cut(double attackSeconds, Recording sound, int channel) {}

    /**
     * Hands out the plucks of a recording in order, from the channel that holds the most sound.
     *
     * @param file the recording
     * @param longestSeconds at most so much of each
     * @param taker what is done with them; each is read only when it is asked for
     * @return what reading the file showed
     * @throws io.github.tapwright.recording.UnreadableRecordingException if it holds no sound that can be read
     */
    SoundFacts read(SoundFile file, double longestSeconds, Consumer<Iterator<Cut>> taker) {
        Heard heard = source.read(file, recording -> {
            RunTrack track = listened(recording.stream());
            return new Heard(track, recording.facts(track.channelUsed(), track.durationSeconds()));
        });
        return source.read(file, recording -> {
            taker.accept(cuts(heard.track, new Excerpts(recording.stream(), heard.track.spans(longestSeconds))));
            return heard.facts;
        });
    }

    private static RunTrack listened(SampleStream stream) {
        try (ReadAhead ahead = new ReadAhead(stream)) {
            return RunTrack.read(ahead);
        }
    }

    private static Iterator<Cut> cuts(RunTrack track, Excerpts excerpts) {
        int channel = track.channelUsed();
        return track.attacksSeconds().stream()
                .map(attackSeconds -> new Cut(attackSeconds, excerpts.next().only(channel), channel))
                .iterator();
    }

    /** Facts are complete only where the sound was read to its end. */
    private record Heard(RunTrack track, SoundFacts facts) {}
}
