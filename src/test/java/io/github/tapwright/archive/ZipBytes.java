package io.github.tapwright.archive;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The bytes of a ZIP file, so that its directory can be made to lie. */
final class ZipBytes {

    private static final int DIRECTORY_ENTRY = 0x02014B50;
    private static final int LOCAL_ENTRY = 0x04034B50;
    private static final int UNIX = 3;

    private final ByteBuffer bytes;

    private ZipBytes(byte[] bytes) {
        this.bytes = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    static ZipBytes read(Path file) throws IOException {
        return new ZipBytes(Files.readAllBytes(file));
    }

    void writeTo(Path file) throws IOException {
        Files.write(file, bytes.array());
    }

    /** Where the directory's entries begin; in small files of few entries the signature stands nowhere else. */
    List<Integer> entries() {
        List<Integer> found = new ArrayList<>();
        for (int at = 0; at + 46 <= bytes.capacity(); at++) {
            if (bytes.getInt(at) == DIRECTORY_ENTRY) {
                found.add(at);
            }
        }
        return found;
    }

    /** Type and rights as Unix keeps them, in the upper half of the external attributes. */
    void mode(int entry, int mode) {
        bytes.put(entry + 5, (byte) UNIX);
        bytes.putInt(entry + 38, mode << 16);
    }

    void statedSize(int entry, int size) {
        bytes.putInt(entry + 24, size);
    }

    /** Gives an entry a name of the same length, in the directory and in front of its content. */
    void rename(String from, String to) {
        byte[] before = from.getBytes(StandardCharsets.US_ASCII);
        for (int at = 0; at + 46 + before.length <= bytes.capacity(); at++) {
            int signature = bytes.getInt(at);
            int name = at + (signature == DIRECTORY_ENTRY ? 46 : 30);
            if ((signature == DIRECTORY_ENTRY || signature == LOCAL_ENTRY) && holds(name, before)) {
                System.arraycopy(to.getBytes(StandardCharsets.US_ASCII), 0, bytes.array(), name, before.length);
            }
        }
    }

    private boolean holds(int at, byte[] text) {
        for (int i = 0; i < text.length; i++) {
            if (bytes.get(at + i) != text[i]) {
                return false;
            }
        }
        return true;
    }
}
