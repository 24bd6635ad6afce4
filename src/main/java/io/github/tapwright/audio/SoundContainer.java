package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.EOFException;
import java.io.IOException;

/** The kinds of sound file, told apart by their first bytes. */
enum SoundContainer {
    WAV("WAV"),
    AIFF("AIFF"),
    FLAC("FLAC"),
    OGG("Ogg"),
    MP3("MP3"),
    AAC("AAC"),
    MP4("MP4");

    private final String title;

    SoundContainer(String title) {
        this.title = title;
    }

    /** Reads the header; whatever a damaged one does to a decoder is a refusal. */
    SoundDecoder open(FileBytes file) throws IOException {
        try {
            return switch (this) {
                case WAV -> WavReader.open(file);
                case AIFF -> AiffReader.open(file);
                case FLAC -> FlacReader.open(file);
                case OGG -> VorbisReader.open(file);
                case MP3 -> Mp3Reader.open(file);
                case AAC -> AacReader.open(file, new AdtsPackets(file));
                case MP4 -> AacReader.open(file, new Mp4Packets(file));
            };
        } catch (EOFException | DecoderTrouble | RuntimeException | Error e) {
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
        return switch (first) {
            case "RIFF", "RIFX", "RF64", "BW64" -> form.equals("WAVE") ? WAV : unknown();
            case "FORM" -> form.equals("AIFF") || form.equals("AIFC") ? AIFF : unknown();
            case FlacReader.MARKER -> FLAC;
            case "OggS" -> OGG;
            default -> file.letters(4).equals("ftyp") ? MP4 : framed(file);
        };
    }

    /** Sound without a file around it, known only by its rows of frames. */
    private static SoundContainer framed(FileBytes file) throws IOException {
        if (Mp3Reader.isMp3(file)) {
            return MP3;
        }
        return AdtsPackets.isAdts(file) ? AAC : unknown();
    }

    private static SoundContainer unknown() {
        throw new UnreadableRecordingException(
                "this is not a sound file Tapwright knows; save the sound as WAV or FLAC");
    }
}
