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

    /**
     * What is known about the file once its sound was read to the end.
     *
     * @param channelUsed which channel was analysed, from 0
     * @param durationSeconds length of the sound
     * @return the facts, notices included
     */
    public SoundFacts facts(int channelUsed, double durationSeconds) {
        return new SoundFacts(
                format,
                stream.sampleRate().hertz(),
                stream.channelCount(),
                channelUsed,
                durationSeconds,
                notices.get());
    }

    @Override
    public void close() {
        stream.close();
    }
}
