package io.github.tapwright.sitting;

import io.github.tapwright.recording.SampleStream;
import java.util.List;
import java.util.function.Supplier;

/**
 * An open sound file.
 *
 * @param stream its sound
 * @param format the file's format in words, such as "WAV, 24 bit"
 * @param notices where the file departs from what its header promises; complete once the stream was read
 */
public record SourceRecording(SampleStream stream, String format, Supplier<List<String>> notices)
        implements AutoCloseable {

    @Override
    public void close() {
        stream.close();
    }
}
