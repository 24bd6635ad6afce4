package io.github.tapwright.audio;

import java.nio.ByteBuffer;
import java.util.OptionalInt;

/**
 * How one sample is written in bytes.
 *
 * @param name for the maker, such as "24 bit integer"
 * @param bytes how many bytes a sample takes
 * @param bits how many of them carry sound, where that is a number
 * @param lossy true for companded samples
 * @param mayBeUndefined true if the bytes can spell something that is no number (floating point)
 * @param decoding from bytes to a number re full scale; full scale of an integer is 2^(8·bytes − 1)
 */
record SampleEncoding(
        String name, int bytes, OptionalInt bits, boolean lossy, boolean mayBeUndefined, Decoding decoding) {

    /** From bytes to numbers. */
    @FunctionalInterface
    interface Decoding {

        /** The sample that starts at {@code index}. */
        double at(ByteBuffer bytes, int index);

        /**
         * The samples of one channel; encodings that are met often have a loop of their own.
         *
         * @param bytes samples of all channels in turn
         * @param index where the first one starts
         * @param stride bytes from one to the next
         * @param into where they go, from {@code from} on
         * @param from where in it the first goes
         * @param count how many
         */
        default void run(ByteBuffer bytes, int index, int stride, double[] into, int from, int count) {
            for (int i = 0; i < count; i++) {
                into[from + i] = at(bytes, index + i * stride);
            }
        }
    }

    /**
     * Integers; fewer bits than the bytes can hold sit at the upper end, the rest being zero, as both WAV
     * and AIFF ask, so that full scale depends on the bytes alone.
     */
    static SampleEncoding integer(int bits, int bytes, boolean eightBitUnsigned) {
        boolean unsigned = bytes == 1 && eightBitUnsigned;
        String name = bits + " bit " + (unsigned ? "unsigned " : "") + "integer";
        return new SampleEncoding(
                name,
                bytes,
                OptionalInt.of(bits),
                false,
                false,
                unsigned ? IntegerSamples.UNSIGNED : IntegerSamples.of(bytes));
    }

    /** IEEE 754 floating point of 4 or 8 bytes, taken as it is, beyond full scale too. */
    static SampleEncoding floatingPoint(int bytes) {
        Decoding decoding = bytes == 4 ? ByteBuffer::getFloat : ByteBuffer::getDouble;
        return new SampleEncoding(8 * bytes + " bit float", bytes, OptionalInt.of(8 * bytes), false, true, decoding);
    }

    /** Companded telephone samples of one byte. */
    static SampleEncoding companded(String name, double[] table) {
        return new SampleEncoding(
                name, 1, OptionalInt.empty(), true, false, (bytes, index) -> table[bytes.get(index) & 0xFF]);
    }
}
