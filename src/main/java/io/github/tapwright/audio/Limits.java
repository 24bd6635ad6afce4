package io.github.tapwright.audio;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.UnreadableRecordingException;

/** What the analyses were made for: 1 to 8 channels of 8 kHz to 192 kHz; anything else is refused. */
final class Limits {

    static final int MOST_CHANNELS = 8;
    static final double LOWEST_RATE_HZ = 8000;
    static final double HIGHEST_RATE_HZ = 192000;

    private Limits() {}

    static int channels(long count) {
        if (count < 1 || count > MOST_CHANNELS) {
            throw new UnreadableRecordingException("the file says it has " + count + " channels; Tapwright reads 1 to "
                    + MOST_CHANNELS + "; save it as mono or stereo");
        }
        return (int) count;
    }

    static SampleRate rate(double hertz) {
        if (!(hertz >= LOWEST_RATE_HZ && hertz <= HIGHEST_RATE_HZ)) {
            throw new UnreadableRecordingException("the file says it has " + Wording.number(hertz)
                    + " samples a second; Tapwright reads 8000 to 192000; record again at 44100 or 48000");
        }
        return new SampleRate(hertz);
    }
}
