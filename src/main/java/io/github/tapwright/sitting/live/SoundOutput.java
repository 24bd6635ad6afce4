package io.github.tapwright.sitting.live;

import io.github.tapwright.recording.Recording;

/** The machine's loudspeaker or headphones. */
public interface SoundOutput {

    /**
     * Begins to play.
     *
     * @param sound what to play, faded in and out within some milliseconds so that it does not click
     * @param gainDb how much softer than it is, 0 dB or less
     * @return the sound as it plays; the caller closes it
     * @throws io.github.tapwright.recording.UnreadableRecordingException if there is no output, or it is in use
     */
    PlayingSound play(Recording sound, double gainDb);
}
