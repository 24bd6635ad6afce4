package io.github.tapwright.sitting.live;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** A stretch of sound just heard, as the sound card gave it. */
public final class SoundBlock {

    private final LiveFormat format;
    private final byte[] bytes;

    /**
     * A block.
     *
     * @param format of its samples
     * @param bytes whole frames; the block's own from now on, nobody changes them
     */
    public SoundBlock(LiveFormat format, byte[] bytes) {
        if (bytes.length % format.frameBytes() != 0) {
            throw new IllegalArgumentException(bytes.length + " bytes are no whole number of frames");
        }
        this.format = format;
        this.bytes = bytes;
    }

    /**
     * How its samples are stored.
     *
     * @return the format
     */
    public LiveFormat format() {
        return format;
    }

    /**
     * How many samples each channel has.
     *
     * @return 0 or more
     */
    public int frames() {
        return bytes.length / format.frameBytes();
    }

    /**
     * The bytes as the sound card gave them.
     *
     * @return a view that cannot be written through
     */
    public ByteBuffer bytes() {
        return ByteBuffer.wrap(bytes).asReadOnlyBuffer().order(ByteOrder.LITTLE_ENDIAN);
    }

    /**
     * The samples re full scale: integer / 2^(bits − 1).
     *
     * @return shape [channel][sample]
     */
    public double[][] samples() {
        int channelCount = format.channelCount();
        double[][] samples = new double[channelCount][frames()];
        int at = 0;
        for (int n = 0; n < samples[0].length; n++) {
            for (int c = 0; c < channelCount; c++) {
                if (format.bits() == 16) {
                    samples[c][n] = (short) ((bytes[at] & 0xFF) | (bytes[at + 1] << 8)) / 0x1p15;
                    at += 2;
                } else {
                    samples[c][n] =
                            ((bytes[at] & 0xFF) | ((bytes[at + 1] & 0xFF) << 8) | (bytes[at + 2] << 16)) / 0x1p23;
                    at += 3;
                }
            }
        }
        return samples;
    }
}
