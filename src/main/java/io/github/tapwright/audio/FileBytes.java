package io.github.tapwright.audio;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The bytes of a file, or of what follows the tags in front of it, by position; what lies beyond the real end is simply not there. */
final class FileBytes implements AutoCloseable {

    private final FileChannel channel;
    private final long first;
    private final long size;

    private FileBytes(FileChannel channel, long first, long size) {
        this.channel = channel;
        this.first = first;
        this.size = size;
    }

    static FileBytes open(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
        try {
            return new FileBytes(channel, 0, channel.size());
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** The same open file as if it began at {@code position}; closing one closes both. */
    FileBytes from(long position) {
        return new FileBytes(channel, first + position, size - position);
    }

    /** How many bytes there truly were when the file was opened. */
    long size() {
        return size;
    }

    /**
     * Up to {@code length} bytes from {@code position}; fewer where the file ends earlier.
     *
     * @return a buffer of its own, limit set to the bytes that exist
     */
    ByteBuffer at(long position, int length, ByteOrder order) throws IOException {
        long there = Math.max(0, Math.min(length, size - position));
        ByteBuffer bytes = ByteBuffer.allocate((int) there);
        fill(bytes, position);
        return bytes.flip().order(order);
    }

    /** As {@link #at}, as an array of their own. */
    byte[] bytes(long position, int length) throws IOException {
        ByteBuffer there = at(position, length, ByteOrder.BIG_ENDIAN);
        byte[] bytes = new byte[there.remaining()];
        there.get(bytes);
        return bytes;
    }

    /** Four letters at a position, as chunk and box names are written; shorter where the file ends. */
    String letters(long position) throws IOException {
        return StandardCharsets.ISO_8859_1
                .decode(at(position, 4, ByteOrder.BIG_ENDIAN))
                .toString();
    }

    /** Fills the buffer from {@code position} as far as the file goes. */
    void fill(ByteBuffer into, long position) throws IOException {
        long next = first + position;
        while (into.hasRemaining()) {
            int n = channel.read(into, next);
            if (n <= 0) {
                return;
            }
            next += n;
        }
    }

    /** The file from {@code start} as a stream, for the decoder libraries that want one. */
    InputStream streamFrom(long start) {
        return new FileByteStream(this, start);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
