package io.github.tapwright.archive;

import io.github.tapwright.sitting.live.LiveFormat;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * The head of a WAV file that grows: 80 bytes whatever its length, so that it can be written over in place.
 *
 * <p>A chunk named JUNK keeps room for the long sizes of RF64; a file beyond 4 GB gets them there. Source: EBU Tech 3306
 * (RF64), from memory, to be verified.
 */
final class WavHead {

    static final int BYTES = 80;

    private static final int DS64_BYTES = 28;
    private static final long LARGEST_RIFF = 0xFFFF_FFFFL;
    private static final int IN_DS64 = -1;

    private WavHead() {}

    /**
     * The head of a file with so many samples.
     *
     * @param format of the samples
     * @param frames samples of each channel
     * @return ready to be written at the file's start
     */
    static ByteBuffer of(LiveFormat format, long frames) {
        long soundBytes = frames * format.frameBytes();
        long riffBytes = BYTES - 8 + soundBytes + soundBytes % 2;
        boolean isLong = riffBytes > LARGEST_RIFF;
        return ByteBuffer.allocate(BYTES)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(letters(isLong ? "RF64" : "RIFF"))
                .putInt(isLong ? IN_DS64 : (int) riffBytes)
                .put(letters("WAVE"))
                .put(letters(isLong ? "ds64" : "JUNK"))
                .putInt(DS64_BYTES)
                .putLong(isLong ? riffBytes : 0)
                .putLong(isLong ? soundBytes : 0)
                .putLong(isLong ? frames : 0)
                .putInt(0)
                .put(letters("fmt "))
                .putInt(16)
                .putShort((short) 1)
                .putShort((short) format.channelCount())
                .putInt(format.rateHz())
                .putInt(format.rateHz() * format.frameBytes())
                .putShort((short) format.frameBytes())
                .putShort((short) format.bits())
                .put(letters("data"))
                .putInt(isLong ? IN_DS64 : (int) soundBytes)
                .flip();
    }

    private static byte[] letters(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
