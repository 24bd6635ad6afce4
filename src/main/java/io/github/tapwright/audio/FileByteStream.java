package io.github.tapwright.audio;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Objects;

/**
 * A buffered stream over a file that loses patience: a decoder that keeps asking for more after the end is
 * stopped, because some libraries would ask for ever.
 */
final class FileByteStream extends InputStream {

    /** Far more than a decoder needs to notice the end, far less than anyone would wait for. */
    private static final int PATIENCE = 1000;

    private final FileBytes file;
    private final ByteBuffer buffer = ByteBuffer.allocate(1 << 15).limit(0);
    private long next;
    private int readsAfterEnd;

    FileByteStream(FileBytes file, long start) {
        this.file = file;
        this.next = start;
    }

    @Override
    public int read() throws IOException {
        return refill() ? buffer.get() & 0xFF : -1;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        Objects.checkFromIndexSize(offset, length, into.length);
        if (length == 0) {
            return 0;
        }
        if (!refill()) {
            return -1;
        }
        int n = Math.min(length, buffer.remaining());
        buffer.get(into, offset, n);
        return n;
    }

    @Override
    public int available() {
        return (int) Math.min(Integer.MAX_VALUE, buffer.remaining() + Math.max(0, file.size() - next));
    }

    private boolean refill() throws IOException {
        if (buffer.hasRemaining()) {
            return true;
        }
        buffer.clear();
        file.fill(buffer, next);
        buffer.flip();
        next += buffer.remaining();
        if (!buffer.hasRemaining() && ++readsAfterEnd > PATIENCE) {
            throw new IOException("the decoder kept reading after the end of the file");
        }
        return buffer.hasRemaining();
    }
}
