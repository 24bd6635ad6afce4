package io.github.tapwright.audio;

import java.nio.ByteBuffer;
import java.util.HexFormat;

/**
 * What the head of a FLAC file says about the whole ([RFC9639] section 8.2).
 *
 * @param rateHz samples per second
 * @param channels 1 to 8
 * @param bits 4 to 32
 * @param samples in each channel; 0 means the encoder did not know
 * @param md5 checksum of all samples in hexadecimal; all zeros mean there is none
 */
record FlacStreamInfo(int rateHz, int channels, int bits, long samples, String md5) {

    static final int BYTES = 34;

    /** For a file whose header is missing: nothing is known, the frames must say it. */
    static final FlacStreamInfo UNKNOWN = new FlacStreamInfo(0, 0, 0, 0, "0".repeat(32));

    static FlacStreamInfo parse(ByteBuffer block) {
        long packed = block.getLong(10);
        byte[] md5 = new byte[16];
        block.get(18, md5);
        return new FlacStreamInfo(
                (int) (packed >>> 44),
                (int) (packed >>> 41 & 7) + 1,
                (int) (packed >>> 36 & 31) + 1,
                packed & 0xF_FFFF_FFFFL,
                HexFormat.of().formatHex(md5));
    }

    boolean hasChecksum() {
        return !md5.equals(UNKNOWN.md5);
    }
}
