package io.github.tapwright.sitting;

import io.github.tapwright.recording.Recording;
import java.util.Optional;
import java.util.function.Consumer;

/** Makes sound heard: one at a time. */
public interface SoundOutput {

    /**
     * Begins to play a sound, and stops what was played before.
     *
     * @param sound what to play, at its own rate
     * @param gainDb gain, 0 dB or less
     * @param over told once, on a thread of the player, when this sound has come to its end, was stopped, or broke off;
     *     in the last case with what to do about it
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no output that takes such sound
     */
    void play(Recording sound, double gainDb, Consumer<Optional<String>> over);

    /** Stops what is played; nothing happens if nothing is. */
    void stop();
}
