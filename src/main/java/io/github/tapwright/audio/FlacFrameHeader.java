package io.github.tapwright.audio;

import java.io.IOException;

/**
 * The header of one FLAC frame ([RFC9639] section 9.1), checked by its CRC-8.
 *
 * @param blockSize samples in each channel
 * @param rateHz samples per second
 * @param assignment 0 to 7: that many channels plus one; 8 left/side, 9 side/right, 10 mid/side
 * @param bits of each sample
 * @param number of the frame, or of its first sample where block sizes vary
 * @param numbersSamples whether {@code number} counts samples
 */
record FlacFrameHeader(int blockSize, int rateHz, int assignment, int bits, long number, boolean numbersSamples) {

    static final int LEFT_SIDE = 8;
    static final int SIDE_RIGHT = 9;
    static final int MID_SIDE = 10;

    private static final int SYNC = 0x7FFC;
    private static final int[] RATES_HZ = {
        0, 88200, 176400, 192000, 8000, 16000, 22050, 24000, 32000, 44100, 48000, 96000
    };
    private static final int[] BITS = {0, 8, 12, -1, 16, 20, 24, 32};

    /** Reads a header from its sync code on; the checks must have been restarted just before. */
    static FlacFrameHeader read(FlacBits in, FlacStreamInfo info) throws IOException {
        require(in.unsigned(15) == SYNC, "a frame does not start with its sync code");
        boolean numbersSamples = in.unsigned(1) == 1;
        int sizeCode = (int) in.unsigned(4);
        int rateCode = (int) in.unsigned(4);
        int assignment = (int) in.unsigned(4);
        int bitsCode = (int) in.unsigned(3);
        require(in.unsigned(1) == 0, "a reserved bit is set");
        require(assignment <= MID_SIDE, "the channel assignment is reserved");
        long number = codedNumber(in);
        int blockSize = blockSize(in, sizeCode);
        int rateHz = rateHz(in, rateCode, info);
        int bits = bitsCode == 0 ? info.bits() : BITS[bitsCode];
        require(bits > 0, "the number of bits is not given");
        int expected = in.crc8();
        require(in.unsigned(8) == expected, "a frame header fails its check");
        return new FlacFrameHeader(blockSize, rateHz, assignment, bits, number, numbersSamples);
    }

    int channels() {
        return assignment < LEFT_SIDE ? assignment + 1 : 2;
    }

    /** A number written as UTF-8 writes letters, of up to 36 bits. */
    private static long codedNumber(FlacBits in) throws IOException {
        int first = (int) in.unsigned(8);
        int ones = Integer.numberOfLeadingZeros(~(first << 24));
        require(ones != 1 && ones <= 7, "a frame number is not coded properly");
        long number = ones == 0 ? first : first & (0x7F >> ones);
        for (int i = 1; i < ones; i++) {
            number = number << 6 | (in.unsigned(8) & 0x3F);
        }
        return number;
    }

    private static int blockSize(FlacBits in, int code) throws IOException {
        require(code != 0, "the block size is reserved");
        return switch (code) {
            case 1 -> 192;
            case 2, 3, 4, 5 -> 144 << code;
            case 6 -> (int) in.unsigned(8) + 1;
            case 7 -> (int) in.unsigned(16) + 1;
            default -> 1 << code;
        };
    }

    private static int rateHz(FlacBits in, int code, FlacStreamInfo info) throws IOException {
        require(code != 15, "the sample rate is reserved");
        return switch (code) {
            case 0 -> info.rateHz();
            case 12 -> (int) in.unsigned(8) * 1000;
            case 13 -> (int) in.unsigned(16);
            case 14 -> (int) in.unsigned(16) * 10;
            default -> RATES_HZ[code];
        };
    }

    private static void require(boolean holds, String rule) throws DecoderTrouble {
        if (!holds) {
            throw new DecoderTrouble(rule);
        }
    }
}
