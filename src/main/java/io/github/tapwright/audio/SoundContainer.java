package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.EOFException;
import java.io.IOException;

/** The kinds of sound file, told apart by their first bytes. */
enum SoundContainer {
    WAV("WAV"),
    AIFF("AIFF"),
    FLAC("FLAC");

    private final String title;

    SoundContainer(String title) {
        this.title = title;
    }

    /** Reads the header; a library that stumbles over it is a refusal. */
    SoundDecoder open(FileBytes file) throws IOException {
        try {
            return switch (this) {
                case WAV -> WavReader.open(file);
                case AIFF -> AiffReader.open(file);
                case FLAC -> FlacReader.open(file, 0);
            };
        } catch (EOFException | FlacDamage | RuntimeException | Error e) {
            throw DecoderFailures.refusal(title, e);
        }
    }

    /** The kind of file, or a refusal that says what to do. */
    static SoundContainer of(FileBytes file) throws IOException {
        if (file.size() == 0) {
            throw new UnreadableRecordingException("the file is empty; record again");
        }
        String first = file.letters(0);
        String form = file.letters(8);
        if ((first.equals("RIFF") || first.equals("RIFX") || first.equals("RF64") || first.equals("BW64"))
                && form.equals("WAVE")) {
            return WAV;
        }
        if (first.equals("FORM") && (form.equals("AIFF") || form.equals("AIFC"))) {
            return AIFF;
        }
        if (first.equals(FlacReader.MARKER)) {
            return FLAC;
        }
        throw new UnreadableRecordingException(
                "this is not a sound file Tapwright knows; save the sound as WAV or FLAC");
    }
}
