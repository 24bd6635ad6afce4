package io.github.tapwright.audio;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The MD5 of all samples, interleaved as little-endian integers ([RFC9639] section 8.2). */
final class FlacChecksum {

    private final MessageDigest digest;
    private byte[] bytes = {};

    FlacChecksum() {
        try {
            digest = MessageDigest.getInstance("MD5");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has MD5", e);
        }
    }

    void add(FlacFrame frame, int channels, int bits) {
        int width = (bits + 7) / 8;
        int needed = frame.length() * channels * width;
        if (bytes.length < needed) {
            bytes = new byte[needed];
        }
        int at = 0;
        for (int i = 0; i < frame.length(); i++) {
            for (int c = 0; c < channels; c++) {
                long sample = frame.sample(c, i);
                for (int b = 0; b < width; b++) {
                    bytes[at++] = (byte) (sample >> (8 * b));
                }
            }
        }
        digest.update(bytes, 0, needed);
    }

    /** The checksum in hexadecimal; ends the counting. */
    String finish() {
        return HexFormat.of().formatHex(digest.digest());
    }
}
