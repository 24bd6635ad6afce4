package io.github.tapwright.audio;

import io.github.tapwright.audio.PcmDecoder.PcmLayout;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * The format chunk of a WAV file.
 *
 * @param tag which encoding, after looking through WAVE_FORMAT_EXTENSIBLE
 * @param channels how many
 * @param rateHz samples per second
 * @param bytesPerSecond what the header says; redundant, so a cross-check
 * @param frameBytes bytes of one sample of all channels ("block align")
 * @param storedBits bits of a sample as stored
 * @param validBits how many of them carry sound
 */
record WavFormat(
        int tag, int channels, long rateHz, long bytesPerSecond, int frameBytes, int storedBits, int validBits) {

    /** Longest prefix of the chunk that is looked at. */
    static final int BYTES = 40;

    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int A_LAW = 6;
    private static final int MU_LAW = 7;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final int SHORTEST = 16;

    /** The last eight bytes of every extensible format that stands for one of the old tags. */
    private static final long OLD_TAG_GUID_TAIL = 0x8000_00AA_0038_9B71L;

    static WavFormat parse(ByteBuffer chunk) {
        if (chunk.remaining() < SHORTEST) {
            throw new UnreadableRecordingException(
                    "the WAV file's format chunk is cut short; record or export the sound again");
        }
        int tag = unsigned(chunk, 0);
        int bits = unsigned(chunk, 14);
        int validBits = bits;
        if (tag == EXTENSIBLE && chunk.remaining() >= BYTES) {
            int stated = unsigned(chunk, 18);
            validBits = stated >= 1 && stated <= bits ? stated : bits;
            tag = oldTag(chunk);
        }
        return new WavFormat(
                tag,
                unsigned(chunk, 2),
                chunk.getInt(4) & 0xFFFF_FFFFL,
                chunk.getInt(8) & 0xFFFF_FFFFL,
                unsigned(chunk, 12),
                bits,
                validBits);
    }

    private static int oldTag(ByteBuffer chunk) {
        long tail = chunk.duplicate().getLong(32);
        return tail == OLD_TAG_GUID_TAIL ? chunk.getInt(24) : EXTENSIBLE;
    }

    private static int unsigned(ByteBuffer chunk, int at) {
        return chunk.getShort(at) & 0xFFFF;
    }

    /** How samples lie in the file; refuses what contradicts itself or is not plain samples. */
    PcmLayout layout(String container, ByteOrder order) {
        SampleEncoding encoding = encoding();
        SampleRate rate = Limits.rate((double) rateHz);
        SoundFormat format =
                new SoundFormat(container, encoding.name(), rate, channels, encoding.bits(), encoding.lossy());
        return new PcmLayout(format, encoding, order);
    }

    private SampleEncoding encoding() {
        return switch (tag) {
            case PCM -> SampleEncoding.integer(validBits, sampleBytes(8), true);
            case FLOAT -> floatingPoint();
            case A_LAW -> companded("A-law", Companding.aLaw());
            case MU_LAW -> companded("mu-law", Companding.muLaw());
            default ->
                throw new UnreadableRecordingException("the WAV file holds " + foreignName()
                        + ", which is not plain samples; save it as 16 or 24 bit PCM WAV or as FLAC");
        };
    }

    private SampleEncoding floatingPoint() {
        int bytes = sampleBytes(8);
        if (storedBits != 8 * bytes || (bytes != 4 && bytes != 8)) {
            throw contradiction();
        }
        return SampleEncoding.floatingPoint(bytes);
    }

    private SampleEncoding companded(String name, double[] table) {
        sampleBytes(1);
        return SampleEncoding.companded(name, table);
    }

    /** Bytes of one sample of one channel, as the frame's length and the bits agree on. */
    private int sampleBytes(int most) {
        Limits.channels(channels);
        int bytes = frameBytes / channels;
        if (frameBytes % channels != 0 || storedBits < 1 || storedBits > 8 * bytes || bytes > most) {
            throw contradiction();
        }
        return bytes;
    }

    private UnreadableRecordingException contradiction() {
        return new UnreadableRecordingException("the WAV file's header contradicts itself (" + channels
                + " channels of " + storedBits + " bit in frames of " + frameBytes
                + " bytes); open it in the program that made it and save it again");
    }

    /** Whether the redundant byte rate agrees with the rest; if not, the sample rate itself is in doubt. */
    boolean byteRateAgrees() {
        return bytesPerSecond == rateHz * frameBytes;
    }

    private String foreignName() {
        return switch (tag) {
            case 0x0002, 0x0011 -> "ADPCM-compressed sound";
            case 0x0031 -> "GSM-compressed sound";
            case 0x0050, 0x0055 -> "MPEG-compressed sound";
            default -> "sound in an unknown encoding (number " + tag + ")";
        };
    }
}
