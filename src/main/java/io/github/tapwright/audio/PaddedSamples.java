package io.github.tapwright.audio;

import io.github.tapwright.audio.PcmDecoder.PcmLayout;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.OptionalInt;

/**
 * 24 bit samples in 32 bit words: the format puts them in the upper bytes, some programs put them in the
 * lower ones, and the difference is 48 dB.
 */
final class PaddedSamples {

    private static final int LOOKED_AT = 1 << 16;

    private PaddedSamples() {}

    /**
     * Whether the first samples can only be meant low: the byte that should be empty is used, and the top
     * byte holds nothing but a sign or nothing at all.
     */
    static boolean sitLow(FileBytes file, PcmLayout layout, long start, long end) throws IOException {
        SampleEncoding encoding = layout.encoding();
        if (encoding.mayBeUndefined()
                || encoding.bytes() != 4
                || encoding.bits().orElse(0) != 24) {
            return false;
        }
        ByteBuffer words = file.at(start, (int) Math.min(LOOKED_AT, end - start), layout.byteOrder());
        boolean lowestUsed = false;
        for (int at = 0; at + 4 <= words.limit(); at += 4) {
            int word = words.getInt(at);
            int top = word >> 24;
            if (top != 0 && top != -1) {
                return false;
            }
            lowestUsed |= (word & 0xFF) != 0;
        }
        return lowestUsed;
    }

    /** The same layout, samples read from the lower bytes. */
    static PcmLayout low(PcmLayout layout) {
        SampleEncoding low = new SampleEncoding(
                layout.encoding().name(), 4, OptionalInt.of(24), false, false, IntegerSamples.LOW_24_OF_32);
        return new PcmLayout(layout.format(), low, layout.byteOrder());
    }
}
