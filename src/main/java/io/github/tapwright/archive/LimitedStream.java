package io.github.tapwright.archive;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that ends after so many bytes, however many more there are. */
final class LimitedStream extends FilterInputStream {

    private long left;

    LimitedStream(InputStream in, long limit) {
        super(in);
        this.left = limit;
    }

    @Override
    public int read() throws IOException {
        int value = left > 0 ? super.read() : -1;
        left -= value < 0 ? 0 : 1;
        return value;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
        if (left == 0 && length > 0) {
            return -1;
        }
        int count = super.read(bytes, offset, (int) Math.min(length, left));
        left -= Math.max(count, 0);
        return count;
    }
}
