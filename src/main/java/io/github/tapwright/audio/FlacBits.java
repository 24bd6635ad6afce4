package io.github.tapwright.audio;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;

/**
 * The bits of a FLAC stream, most significant first, with the two running checks of a frame ([RFC9639]
 * sections 9.1.8 and 9.3).
 *
 * <p>Bytes are fetched one at a time and only when needed, so that at a byte boundary the checks cover
 * exactly what was read.
 */
final class FlacBits {

    private static final int[] CRC8 = table(0x07, 8);
    private static final int[] CRC16 = table(0x8005, 16);

    private final InputStream in;
    private long cache;
    private int cached;
    private int crc8;
    private int crc16;

    FlacBits(InputStream in) {
        this.in = in;
    }

    private static int[] table(int polynomial, int width) {
        int[] table = new int[256];
        for (int value = 0; value < 256; value++) {
            int crc = value << (width - 8);
            for (int bit = 0; bit < 8; bit++) {
                boolean carry = (crc >> (width - 1) & 1) != 0;
                crc = (crc << 1 ^ (carry ? polynomial : 0)) & ((1 << width) - 1);
            }
            table[value] = crc;
        }
        return table;
    }

    /** Starts both checks afresh; at a byte boundary only. */
    void restartChecks() {
        crc8 = 0;
        crc16 = 0;
    }

    int crc8() {
        return crc8;
    }

    int crc16() {
        return crc16;
    }

    /** Whether another byte can be had; may fetch it. */
    boolean hasMore() throws IOException {
        return cached > 0 || fetch();
    }

    /** Whether the next byte, which may be fetched, has this value; at a byte boundary only. */
    boolean nextByteIs(int value) throws IOException {
        return hasMore() && (cache >>> (cached - 8) & 0xFF) == value;
    }

    private boolean fetch() throws IOException {
        int value = in.read();
        if (value < 0) {
            return false;
        }
        crc8 = CRC8[crc8 ^ value];
        crc16 = (crc16 << 8 & 0xFFFF) ^ CRC16[crc16 >> 8 ^ value];
        cache = cache << 8 | value;
        cached += 8;
        return true;
    }

    private void need(int bits) throws IOException {
        while (cached < bits) {
            if (!fetch()) {
                throw new EOFException("the FLAC stream ends inside a frame");
            }
        }
    }

    /** An unsigned number of 0 to 56 bits. */
    long unsigned(int bits) throws IOException {
        need(bits);
        cached -= bits;
        return cache >>> cached & ((1L << bits) - 1);
    }

    /** A number in two's complement of 0 to 56 bits. */
    long signed(int bits) throws IOException {
        return bits == 0 ? 0 : unsigned(bits) << (64 - bits) >> (64 - bits);
    }

    /** The number of zeros before the next one, which is read too. */
    long unary() throws IOException {
        long zeros = 0;
        while (true) {
            need(1);
            long left = cache << (64 - cached);
            if (left != 0) {
                int run = Long.numberOfLeadingZeros(left);
                cached -= run + 1;
                return zeros + run;
            }
            zeros += cached;
            cached = 0;
        }
    }

    /** Drops the rest of the current byte. */
    void alignToByte() {
        cached -= cached % 8;
    }
}
