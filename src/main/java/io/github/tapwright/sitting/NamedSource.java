package io.github.tapwright.sitting;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.util.function.Function;

/** Opens sound files, and speaks of one that cannot be read by the maker's name for it. */
final class NamedSource {

    private final RecordingSource source;

    NamedSource(RecordingSource source) {
        this.source = source;
    }

    /**
     * Reads a file, which may be a kept copy under a name of its own, and closes it.
     *
     * @throws UnreadableRecordingException if it holds no sound that can be read, naming it as the maker does
     */
    <T> T read(SoundFile file, Function<SourceRecording, T> reading) {
        String name = file.name();
        try (SourceRecording recording = source.open(file.path())) {
            return reading.apply(recording);
        } catch (UnreadableRecordingException e) {
            String said = String.valueOf(e.getMessage()).replace(file.path().toString(), name);
            throw new UnreadableRecordingException(said.contains(name) ? said : name + ": " + said, e);
        }
    }
}
