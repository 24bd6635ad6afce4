package io.github.tapwright.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** ID3v2 tags, which some programs put in front of any kind of compressed sound. */
final class LeadingTags {

    private static final int HEADER_BYTES = 10;
    private static final int HAS_FOOTER = 0x10;
    private static final int MOST_TAGS = 100;

    private LeadingTags() {}

    /** Where the sound starts: the first byte after all such tags, 0 where there is none. */
    static long end(FileBytes file) throws IOException {
        long at = 0;
        for (int i = 0; i < MOST_TAGS && file.letters(at).startsWith("ID3"); i++) {
            ByteBuffer header = file.at(at, HEADER_BYTES, ByteOrder.BIG_ENDIAN);
            if (header.remaining() < HEADER_BYTES) {
                return at;
            }
            boolean footer = (header.get(5) & HAS_FOOTER) != 0;
            at += HEADER_BYTES + sevenBitBytes(header.getInt(6)) + (footer ? HEADER_BYTES : 0);
        }
        return at;
    }

    /** Four bytes of seven bits each. */
    private static long sevenBitBytes(int word) {
        return (word & 0x7F) | (word >> 1 & 0x3F80) | (word >> 2 & 0x1F_C000) | (word >> 3 & 0xFE0_0000);
    }
}
