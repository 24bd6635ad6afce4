package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.SourceRecording;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The way from a file to its sound: the kind of file is told by its content, never by its name. */
public final class AudioFile {

    private AudioFile() {}

    /**
     * Opens a sound file and reads its header.
     *
     * @param file WAV, AIFF, FLAC, Ogg Vorbis, MP3 or AAC, of 1 to 8 channels and 8 kHz to 192 kHz
     * @return the sound from its first sample; to be closed by the caller
     * @throws UnreadableRecordingException if there is no such file, it holds no sound that can be read, or its
     *     header contradicts itself; the message says what to do
     */
    public static OpenedAudio open(Path file) {
        requireReadable(file);
        FileBytes bytes = openBytes(file);
        try {
            FileBytes sound = LeadingTags.skipped(bytes);
            return new GuardedSound(SoundContainer.of(sound).open(sound));
        } catch (IOException e) {
            closeQuietly(bytes);
            throw unreadable(file, e);
        } catch (RuntimeException e) {
            closeQuietly(bytes);
            throw e;
        }
    }

    /**
     * Opens a sound file for the use cases.
     *
     * @param file as in {@link #open}
     * @return its sound, its format in words, and what was noticed
     * @throws UnreadableRecordingException as there
     */
    public static SourceRecording source(Path file) {
        OpenedAudio audio = open(file);
        return new SourceRecording(audio, audio.format().words(), audio::notices);
    }

    private static void requireReadable(Path file) {
        if (Files.isDirectory(file)) {
            throw new UnreadableRecordingException(file + " is a folder; name a sound file in it");
        }
        if (!Files.exists(file)) {
            throw new UnreadableRecordingException("there is no file " + file + "; check its name and place");
        }
        if (!Files.isRegularFile(file)) {
            throw new UnreadableRecordingException(file + " is not an ordinary file; copy the sound to a disk first");
        }
    }

    private static FileBytes openBytes(Path file) {
        try {
            return FileBytes.open(file);
        } catch (AccessDeniedException e) {
            throw new UnreadableRecordingException("you may not read " + file + "; ask for permission or copy it", e);
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private static UnreadableRecordingException unreadable(Path file, IOException e) {
        return new UnreadableRecordingException(
                file + " could not be read from the disk (" + e.getMessage() + "); check the disk and try again", e);
    }

    private static void closeQuietly(FileBytes bytes) {
        try {
            bytes.close();
        } catch (IOException e) {
            // the failure that matters is already on its way
        }
    }
}
