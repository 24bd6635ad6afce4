package io.github.tapwright.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The boxes of an MP4 file (ISO/IEC 14496-12 section 4.2), found by name, bounded by the file. */
final class Mp4Boxes {

    private static final int HEADER_BYTES = 8;
    private static final int LONG_HEADER_BYTES = 16;
    private static final int MOST_BOXES = 10_000;

    private final FileBytes file;

    Mp4Boxes(FileBytes file) {
        this.file = file;
    }

    /** The whole file as if it were one box. */
    Box whole() {
        return new Box("file", 0, file.size());
    }

    /** The boxes of the given name directly inside another one. */
    List<Box> children(Box parent, String name) throws IOException {
        return childrenFrom(parent, 0, name);
    }

    /** As {@link #children}, with {@code skipped} bytes of other things in front of the first box. */
    List<Box> childrenFrom(Box parent, int skipped, String name) throws IOException {
        List<Box> found = new ArrayList<>();
        long at = parent.start() + skipped;
        for (int i = 0; i < MOST_BOXES && at + HEADER_BYTES <= parent.end(); i++) {
            ByteBuffer header = file.at(at, LONG_HEADER_BYTES, ByteOrder.BIG_ENDIAN);
            long size = header.getInt(0) & 0xFFFF_FFFFL;
            int headerBytes = HEADER_BYTES;
            if (size == 1 && header.remaining() == LONG_HEADER_BYTES) {
                size = header.getLong(8);
                headerBytes = LONG_HEADER_BYTES;
            } else if (size == 0) {
                size = parent.end() - at;
            }
            if (size < headerBytes) {
                break;
            }
            long end = size > parent.end() - at ? parent.end() : at + size;
            if (file.letters(at + 4).equals(name)) {
                found.add(new Box(name, at + headerBytes, end));
            }
            at = end;
        }
        return found;
    }

    /** The first box at the end of a path of names. */
    Optional<Box> path(Box from, String... names) throws IOException {
        Optional<Box> box = Optional.of(from);
        for (String name : names) {
            List<Box> inside = box.isPresent() ? children(box.get(), name) : List.of();
            box = inside.stream().findFirst();
        }
        return box;
    }

    /** As {@link #path}, but damage where nothing is there. */
    Box require(Box from, String... names) throws IOException {
        return path(from, names)
                .orElseThrow(() -> new DecoderTrouble("the MP4 file lacks its box " + String.join("/", names)));
    }

    /** Everything in a box; damage where that is more than a table of a long recording could be. */
    ByteBuffer body(Box box, int most) throws IOException {
        if (box.end() - box.start() > most) {
            throw new DecoderTrouble("the MP4 box " + box.name() + " is too large");
        }
        return file.at(box.start(), (int) (box.end() - box.start()), ByteOrder.BIG_ENDIAN);
    }

    /**
     * A box of the file.
     *
     * @param name four letters
     * @param start position of its first byte after the header
     * @param end position after its last byte, never beyond its parent's
     */
    record Box(String name, long start, long end) {}
}
