package io.github.tapwright.audio;

import io.github.tapwright.recording.Recording;

/** A sound on its way to an output: turned down, led to silence at its end so that it does not click, as whole numbers. */
final class PlayedSamples {

    private static final double FADE_SECONDS = 0.02;

    private final double[][] channels;
    private final double gain;
    private final double fadeSamples;

    PlayedSamples(Recording sound, double gainDb) {
        if (!(gainDb <= 0)) {
            throw new IllegalArgumentException("sound is only turned down, not by " + gainDb + " dB");
        }
        channels = new double[sound.channelCount()][];
        for (int c = 0; c < channels.length; c++) {
            channels[c] = sound.channel(c);
        }
        gain = Math.pow(10, gainDb / 20);
        fadeSamples = FADE_SECONDS * sound.sampleRate().hertz();
    }

    int length() {
        return channels[0].length;
    }

    /** Little-endian frames; a sample beyond full scale, as compressed files can hold, becomes full scale. */
    byte[] frames(int from, int count, int bits) {
        int width = bits / 8;
        double full = Math.scalb(1.0, bits - 1);
        byte[] bytes = new byte[count * channels.length * width];
        int at = 0;
        for (int n = from; n < from + count; n++) {
            double here = gain * Math.min(1, (length() - 1 - n) / fadeSamples);
            for (double[] channel : channels) {
                long value = Math.round(channel[n] * here * full);
                value = Math.max((long) -full, Math.min((long) full - 1, value));
                for (int b = 0; b < width; b++) {
                    bytes[at++] = (byte) (value >> (8 * b));
                }
            }
        }
        return bytes;
    }
}
