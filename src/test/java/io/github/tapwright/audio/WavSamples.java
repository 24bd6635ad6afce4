package io.github.tapwright.audio;

import java.nio.ByteBuffer;

/** How {@link WavWriter} stores each sample. */
public enum WavSamples {
    /** 16 bit integers: −32768 to 32767 stand for −1 to just under +1. */
    INT_16("16 bit WAV", 2, 1),
    /** 24 bit integers: −8388608 to 8388607 stand for −1 to just under +1. */
    INT_24("24 bit WAV", 3, 1),
    /** IEEE 754 single precision, which also holds samples beyond full scale. */
    FLOAT_32("32 bit float WAV", 4, 3);

    private final String title;
    private final int bytes;
    private final int formatTag;

    WavSamples(String title, int bytes, int formatTag) {
        this.title = title;
        this.bytes = bytes;
        this.formatTag = formatTag;
    }

    String title() {
        return title;
    }

    int bytes() {
        return bytes;
    }

    int formatTag() {
        return formatTag;
    }

    /** Whether the sample, rounded, has a place in this format. */
    boolean canHold(double sample) {
        if (this == FLOAT_32) {
            return Float.isFinite((float) sample);
        }
        double rounded = Math.rint(sample * fullScale());
        return rounded >= -fullScale() && rounded < fullScale();
    }

    void put(ByteBuffer into, double sample) {
        switch (this) {
            case FLOAT_32 -> into.putFloat((float) sample);
            case INT_16 -> into.putShort((short) Math.rint(sample * fullScale()));
            case INT_24 -> {
                int value = (int) Math.rint(sample * fullScale());
                into.putShort((short) value).put((byte) (value >> 16));
            }
        }
    }

    private double fullScale() {
        return this == INT_16 ? 0x1p15 : 0x1p23;
    }
}
