package io.github.tapwright.audio;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** A mono AIFF or AIFC file of 44100 Hz put together byte by byte. */
final class AiffImage {

    /** 44100 as an 80 bit number: exponent 16383 + 15, mantissa 44100 · 2^48. */
    private static final short RATE_EXPONENT = 0x400E;

    private static final long RATE_MANTISSA = 44100L << 48;

    private AiffImage() {}

    /** An AIFF file if {@code compression} is empty, else an AIFC file. */
    static byte[] of(String compression, int bits, byte[] sound, int statedSamples) {
        boolean aifc = !compression.isEmpty();
        int common = aifc ? 24 : 18;
        ByteBuffer out = ByteBuffer.allocate(12 + 8 + common + 12 + 16 + sound.length + sound.length % 2);
        out.put(letters("FORM")).putInt(out.capacity() - 8).put(letters(aifc ? "AIFC" : "AIFF"));
        out.put(letters("NAME")).putInt(3).put(new byte[] {'t', 'a', 'p', 0});
        out.put(letters("COMM")).putInt(common).putShort((short) 1).putInt(statedSamples);
        out.putShort((short) bits).putShort(RATE_EXPONENT).putLong(RATE_MANTISSA);
        if (aifc) {
            out.put(letters(compression)).putShort((short) 0);
        }
        out.put(letters("SSND")).putInt(8 + sound.length).putInt(0).putInt(0).put(sound);
        return out.array();
    }

    private static byte[] letters(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
