package io.github.tapwright.sitting;

import java.util.regex.Pattern;

/**
 * A recording kept bit for bit, known by what is in it.
 *
 * @param sha256 SHA-256 of all its bytes, 64 lower-case hexadecimal digits
 * @param sizeBytes its length
 * @param extension the ending of its file name, lower case, without the dot
 */
public record Original(String sha256, long sizeBytes, String extension) {

    private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");
    private static final Pattern EXTENSION = Pattern.compile("[0-9a-z]{1,8}");

    /** Refuses what cannot name a kept file. */
    public Original {
        if (!SHA256.matcher(sha256).matches() || !EXTENSION.matcher(extension).matches() || sizeBytes < 0) {
            throw new IllegalArgumentException(
                    "not an original: " + sha256 + "." + extension + " of " + sizeBytes + " bytes");
        }
    }
}
