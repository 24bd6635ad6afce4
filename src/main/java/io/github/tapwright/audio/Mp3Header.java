package io.github.tapwright.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/**
 * The four bytes before each frame of MPEG layer III sound (ISO/IEC 11172-3 section 2.4.1.3, 13818-3).
 *
 * @param mpeg1 false for the half rates of MPEG-2 and the quarter rates of "MPEG-2.5"
 * @param rateHz samples per second
 * @param channels 1 or 2
 * @param frameBytes length of the frame, header included
 * @param hasCheck whether two bytes of check follow the header
 */
record Mp3Header(boolean mpeg1, int rateHz, int channels, int frameBytes, boolean hasCheck) {

    private static final int BYTES = 4;
    private static final int[] MPEG1_KBIT = {0, 32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320};
    private static final int[] MPEG2_KBIT = {0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160};
    private static final int[] MPEG1_RATES_HZ = {44100, 48000, 32000};

    /** The header at a position, if there is one; free-format frames count as none. */
    static Optional<Mp3Header> at(FileBytes file, long position) throws IOException {
        ByteBuffer bytes = file.at(position, BYTES, ByteOrder.BIG_ENDIAN);
        return bytes.remaining() < BYTES ? Optional.empty() : parse(bytes.getInt());
    }

    private static Optional<Mp3Header> parse(int word) {
        int version = word >> 19 & 3;
        int layer = word >> 17 & 3;
        int bitrate = word >> 12 & 15;
        int rate = word >> 10 & 3;
        boolean sync = word >>> 21 == 0x7FF;
        if (!sync || version == 1 || layer != 1 || bitrate == 0 || bitrate == 15 || rate == 3) {
            return Optional.empty();
        }
        boolean mpeg1 = version == 3;
        int rateHz = MPEG1_RATES_HZ[rate] >> (mpeg1 ? 0 : version == 2 ? 1 : 2);
        int bitsPerSecond = 1000 * (mpeg1 ? MPEG1_KBIT : MPEG2_KBIT)[bitrate];
        int frameBytes = (mpeg1 ? 144 : 72) * bitsPerSecond / rateHz + (word >> 9 & 1);
        int channels = (word >> 6 & 3) == 3 ? 1 : 2;
        return Optional.of(new Mp3Header(mpeg1, rateHz, channels, frameBytes, (word >> 16 & 1) == 0));
    }

    int samples() {
        return mpeg1 ? 1152 : 576;
    }

    /** Whether the other frame can belong to the same sound. */
    boolean continues(Mp3Header other) {
        return mpeg1 == other.mpeg1 && rateHz == other.rateHz && channels == other.channels;
    }

    /** Where, in a frame that describes the file instead of holding sound, the description starts. */
    int descriptionOffset() {
        int sideInformation = mpeg1 ? (channels == 1 ? 17 : 32) : (channels == 1 ? 9 : 17);
        return BYTES + sideInformation;
    }
}
