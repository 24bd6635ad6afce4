package io.github.tapwright.audio;

import io.github.tapwright.audio.PcmDecoder.PcmLayout;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * The common chunk of an AIFF or AIFC file.
 *
 * @param container "AIFF" or "AIFC"
 * @param channels how many
 * @param samples how many in each channel, as the header says
 * @param bits of each sample
 * @param rateHz samples per second, from an 80 bit number
 * @param compression four letters of an AIFC file; "NONE" in AIFF
 */
record AiffFormat(String container, int channels, long samples, int bits, double rateHz, String compression) {

    /** Longest prefix of the chunk that is looked at. */
    static final int BYTES = 22;

    private static final int SHORTEST = 18;
    private static final int MOST_BITS = 32;

    static AiffFormat parse(ByteBuffer chunk, boolean aifc) {
        if (chunk.remaining() < (aifc ? BYTES : SHORTEST)) {
            throw new UnreadableRecordingException(
                    "the AIFF file's common chunk is cut short; record or export the sound again");
        }
        String compression =
                aifc ? StandardCharsets.ISO_8859_1.decode(chunk.slice(18, 4)).toString() : "NONE";
        return new AiffFormat(
                aifc ? "AIFC" : "AIFF",
                chunk.getShort(0) & 0xFFFF,
                chunk.getInt(2) & 0xFFFF_FFFFL,
                chunk.getShort(6) & 0xFFFF,
                extended(chunk.getShort(8), chunk.getLong(10)),
                compression);
    }

    /**
     * An 80 bit extended number: (−1)^s · m · 2^(e − 16383 − 63), m a 64 bit integer without hidden bit.
     *
     * @return the nearest double; infinite where 80 bits say so
     */
    static double extended(short signAndExponent, long mantissa) {
        int exponent = signAndExponent & 0x7FFF;
        if (exponent == 0x7FFF) {
            return Double.POSITIVE_INFINITY;
        }
        double unsigned = (mantissa >>> 1) * 2.0 + (mantissa & 1);
        double magnitude = Math.scalb(unsigned, exponent - 16383 - 63);
        return signAndExponent < 0 ? -magnitude : magnitude;
    }

    PcmLayout layout() {
        Limits.channels(channels);
        SampleEncoding encoding = encoding();
        SoundFormat format = new SoundFormat(
                container, encoding.name(), Limits.rate(rateHz), channels, encoding.bits(), encoding.lossy());
        return new PcmLayout(format, encoding, byteOrder());
    }

    private SampleEncoding encoding() {
        return switch (compression) {
            case "NONE", "twos", "sowt" -> SampleEncoding.integer(requireBits(), (bits + 7) / 8, false);
            case "raw " -> SampleEncoding.integer(8, 1, true);
            case "in24", "42ni" -> SampleEncoding.integer(24, 3, false);
            case "in32", "23ni" -> SampleEncoding.integer(32, 4, false);
            case "fl32", "FL32" -> SampleEncoding.floatingPoint(4);
            case "fl64", "FL64" -> SampleEncoding.floatingPoint(8);
            case "ulaw", "ULAW" -> SampleEncoding.companded("mu-law", Companding.muLaw());
            case "alaw", "ALAW" -> SampleEncoding.companded("A-law", Companding.aLaw());
            default ->
                throw new UnreadableRecordingException("the AIFF file holds compressed sound"
                        + (ChunkWalk.isName(compression) ? " (" + compression + ")" : "")
                        + ", which is not plain samples; save it as AIFF without compression or as FLAC");
        };
    }

    private int requireBits() {
        if (bits < 1 || bits > MOST_BITS) {
            throw new UnreadableRecordingException("the AIFF file says its samples have " + bits
                    + " bits, which cannot be; open it in the program that made it and save it again");
        }
        return bits;
    }

    private ByteOrder byteOrder() {
        boolean little = compression.equals("sowt") || compression.equals("42ni") || compression.equals("23ni");
        return little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
    }
}
