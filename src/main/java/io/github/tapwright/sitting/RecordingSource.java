package io.github.tapwright.sitting;

import java.nio.file.Path;

/** Opens sound files, whether the maker's own or kept originals. */
@FunctionalInterface
public interface RecordingSource {

    /**
     * Opens a sound file at its first sample.
     *
     * @param file the file
     * @return the sound and what is known about the file; the caller closes it
     * @throws io.github.tapwright.recording.UnreadableRecordingException if it holds no sound that can be read
     */
    SourceRecording open(Path file);
}
