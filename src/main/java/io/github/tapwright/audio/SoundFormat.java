package io.github.tapwright.audio;

import io.github.tapwright.recording.SampleRate;
import java.util.OptionalInt;

/**
 * What a sound file says about itself, as far as it was believed.
 *
 * @param container the kind of file, such as "WAV" or "FLAC"
 * @param encoding how samples are stored, such as "24 bit integer" or "MP3"
 * @param sampleRate samples per second of each channel
 * @param channelCount 1 to 8
 * @param bitsPerSample how many bits of each sample carry sound; empty where the encoding has no such number
 * @param lossy true if the encoding threw part of the sound away, so that levels and decays are approximate
 */
public record SoundFormat(
        String container,
        String encoding,
        SampleRate sampleRate,
        int channelCount,
        OptionalInt bitsPerSample,
        boolean lossy) {

    /**
     * As people read it.
     *
     * @return such as "WAV, 24 bit integer" or "MP4, AAC (lossy)"
     */
    public String words() {
        return container + ", " + encoding + (lossy ? " (lossy)" : "");
    }
}
