package io.github.tapwright.audio;

import java.util.Arrays;

/** Puts right the checksums of Ogg pages after they were changed, so that the changes reach the decoder. */
final class OggChecksums {

    private static final int HEADER_BYTES = 27;
    private static final int CHECKSUM_AT = 22;
    private static final int POLYNOMIAL = 0x04C11DB7;

    private OggChecksums() {}

    /** The same array; anything that is no row of Ogg pages stays as it is. */
    static byte[] repaired(byte[] bytes) {
        int at = 0;
        while (at + HEADER_BYTES <= bytes.length && bytes[at] == 'O' && bytes[at + 1] == 'g') {
            int segments = bytes[at + 26] & 0xFF;
            int length = HEADER_BYTES + segments;
            for (int i = 0; i < segments && at + HEADER_BYTES + i < bytes.length; i++) {
                length += bytes[at + HEADER_BYTES + i] & 0xFF;
            }
            if (at + length > bytes.length) {
                break;
            }
            repairPage(bytes, at, length);
            at += length;
        }
        return bytes;
    }

    private static void repairPage(byte[] bytes, int at, int length) {
        Arrays.fill(bytes, at + CHECKSUM_AT, at + CHECKSUM_AT + 4, (byte) 0);
        int crc = 0;
        for (int i = 0; i < length; i++) {
            crc ^= (bytes[at + i] & 0xFF) << 24;
            for (int bit = 0; bit < 8; bit++) {
                crc = crc < 0 ? (crc << 1) ^ POLYNOMIAL : crc << 1;
            }
        }
        for (int i = 0; i < 4; i++) {
            bytes[at + CHECKSUM_AT + i] = (byte) (crc >> (8 * i));
        }
    }
}
