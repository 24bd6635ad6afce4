package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;

/** What a maker is told when a decoder gives up before the first good sample. */
final class DecoderFailures {

    private DecoderFailures() {}

    static UnreadableRecordingException refusal(String container, Throwable cause) {
        if (cause instanceof UnreadableRecordingException refusal) {
            return refusal;
        }
        return new UnreadableRecordingException(
                "the " + container + " file is damaged and cannot be decoded; copy it again or save it as WAV or FLAC",
                cause);
    }
}
