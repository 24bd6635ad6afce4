package io.github.tapwright.audio;

import io.github.tapwright.audio.SampleEncoding.Decoding;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Integer samples of 1 to 8 bytes in either byte order, as numbers re full scale. */
final class IntegerSamples {

    static final Decoding UNSIGNED = (bytes, index) -> ((bytes.get(index) & 0xFF) - 128) / 128.0;

    /** 24 bit in the lower three of four bytes: against the format's rule, but written by some programs. */
    static final Decoding LOW_24_OF_32 =
            (bytes, index) -> int24(bytes, bytes.order() == ByteOrder.LITTLE_ENDIAN ? index : index + 1) * 0x1p-23;

    private IntegerSamples() {}

    /** Signed samples of the given number of bytes; full scale is 2^(8·bytes − 1). */
    static Decoding of(int bytes) {
        return switch (bytes) {
            case 1 -> (buffer, index) -> buffer.get(index) * 0x1p-7;
            case 2 -> (buffer, index) -> buffer.getShort(index) * 0x1p-15;
            case 3 -> (buffer, index) -> int24(buffer, index) * 0x1p-23;
            case 4 -> (buffer, index) -> buffer.getInt(index) * 0x1p-31;
            default -> (buffer, index) -> upper(buffer, index, bytes) * 0x1p-63;
        };
    }

    private static int int24(ByteBuffer buffer, int index) {
        return buffer.order() == ByteOrder.LITTLE_ENDIAN
                ? (buffer.getShort(index) & 0xFFFF) | buffer.get(index + 2) << 16
                : buffer.get(index) << 16 | (buffer.getShort(index + 1) & 0xFFFF);
    }

    /** The sample in the upper bytes of 64 bits. */
    private static long upper(ByteBuffer buffer, int index, int bytes) {
        boolean little = buffer.order() == ByteOrder.LITTLE_ENDIAN;
        long value = 0;
        for (int i = 0; i < bytes; i++) {
            value = value << 8 | (buffer.get(little ? index + bytes - 1 - i : index + i) & 0xFF);
        }
        return value << (64 - 8 * bytes);
    }
}
