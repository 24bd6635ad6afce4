package io.github.tapwright.audio;

import io.github.tapwright.recording.Recording;
import java.nio.file.Path;
import java.util.List;

/** A file read to its end: its format, its sound and all its notices. */
record Reading(SoundFormat format, Recording sound, List<String> notices) {

    private static final int MOST_SAMPLES = 10_000_000;

    static Reading of(Path file) {
        try (OpenedAudio audio = AudioFile.open(file)) {
            Recording sound = Recording.readAll(audio, MOST_SAMPLES);
            return new Reading(audio.format(), sound, audio.notices());
        }
    }
}
