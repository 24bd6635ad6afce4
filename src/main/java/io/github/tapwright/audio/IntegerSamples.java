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
            case 2 -> new TwoBytes();
            case 3 -> new ThreeBytes();
            case 4 -> (buffer, index) -> buffer.getInt(index) * 0x1p-31;
            default -> (buffer, index) -> upper(buffer, index, bytes) * 0x1p-63;
        };
    }

    /** What most recorders write; their bytes are put together here, as asking the buffer for each takes five times as long. */
    private static final class TwoBytes implements Decoding {

        @Override
        public double at(ByteBuffer buffer, int index) {
            return buffer.getShort(index) * 0x1p-15;
        }

        @Override
        public void run(ByteBuffer buffer, int index, int stride, double[] into, int from, int count) {
            byte[] bytes = buffer.array();
            boolean little = buffer.order() == ByteOrder.LITTLE_ENDIAN;
            int first = buffer.arrayOffset() + index;
            int low = first + (little ? 0 : 1);
            int high = first + (little ? 1 : 0);
            for (int i = 0; i < count; i++) {
                into[from + i] = ((bytes[low] & 0xFF) | bytes[high] << 8) * 0x1p-15;
                low += stride;
                high += stride;
            }
        }
    }

    /** The same for what good recorders write. */
    private static final class ThreeBytes implements Decoding {

        @Override
        public double at(ByteBuffer buffer, int index) {
            return int24(buffer, index) * 0x1p-23;
        }

        @Override
        public void run(ByteBuffer buffer, int index, int stride, double[] into, int from, int count) {
            byte[] bytes = buffer.array();
            boolean little = buffer.order() == ByteOrder.LITTLE_ENDIAN;
            int first = buffer.arrayOffset() + index;
            int low = first + (little ? 0 : 2);
            int middle = first + 1;
            int high = first + (little ? 2 : 0);
            for (int i = 0; i < count; i++) {
                into[from + i] = ((bytes[low] & 0xFF) | (bytes[middle] & 0xFF) << 8 | bytes[high] << 16) * 0x1p-23;
                low += stride;
                middle += stride;
                high += stride;
            }
        }
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
