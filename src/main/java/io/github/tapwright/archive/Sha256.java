package io.github.tapwright.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The SHA-256 and the length of some bytes. Source: [FIPS180-4].
 *
 * @param hex 64 lower-case hexadecimal digits
 * @param sizeBytes how many bytes
 */
record Sha256(String hex, long sizeBytes) {

    static Sha256 of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return copy(in, OutputStream.nullOutputStream());
        }
    }

    /** Copies all bytes and digests them in the same pass. */
    static Sha256 copy(InputStream from, OutputStream to) throws IOException {
        DigestInputStream digesting = new DigestInputStream(from, digest());
        long size = digesting.transferTo(to);
        return new Sha256(HexFormat.of().formatHex(digesting.getMessageDigest().digest()), size);
    }

    /** The 32 bytes themselves. */
    static byte[] of(byte[] bytes) {
        return digest().digest(bytes);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
