package io.github.tapwright.archive;

import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.SoundBlock;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The file of a running recording: a WAV file at every moment, locked against other programs while it grows.
 *
 * <p>Samples are appended; every half second the head is written over with the new length and all of it forced to disk.
 * After a crash there may be more sound than the head says, never less than half a second before the end.
 */
final class CaptureFile implements AutoCloseable {

    private static final double FORCED_SECONDS = 0.5;

    private final FileChannel channel;
    private final LiveFormat format;
    private long frames;
    private long forcedFrames;

    private CaptureFile(FileChannel channel, LiveFormat format) {
        this.channel = channel;
        this.format = format;
    }

    static CaptureFile create(Path file, LiveFormat format) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try {
            if (channel.tryLock() == null) {
                throw new IOException("another program holds the file");
            }
            CaptureFile created = new CaptureFile(channel, format);
            created.force();
            Durable.sync(Durable.parent(file));
            return created;
        } catch (IOException e) {
            undo(e, channel::close);
            undo(e, () -> Files.deleteIfExists(file)); // an empty file would look like a recording
            throw e;
        }
    }

    /** What fails while cleaning up must not hide why there was something to clean up. */
    private static void undo(IOException why, Cleaning cleaning) {
        try {
            cleaning.run();
        } catch (IOException e) {
            why.addSuppressed(e);
        }
    }

    private interface Cleaning {
        void run() throws IOException;
    }

    void append(SoundBlock block) throws IOException {
        write(block.bytes(), WavHead.BYTES + frames * format.frameBytes());
        frames += block.frames();
        if (frames - forcedFrames >= FORCED_SECONDS * format.rateHz()) {
            force();
        }
    }

    private void force() throws IOException {
        write(WavHead.of(format, frames), 0);
        channel.force(false);
        forcedFrames = frames;
    }

    private void write(ByteBuffer bytes, long at) throws IOException {
        long position = at;
        while (bytes.hasRemaining()) {
            position += channel.write(bytes, position);
        }
    }

    private void pad() throws IOException {
        if (frames * format.frameBytes() % 2 == 1) {
            write(ByteBuffer.allocate(1), WavHead.BYTES + frames * format.frameBytes());
        }
    }

    @Override
    public void close() throws IOException {
        try (channel) {
            pad();
            force();
        }
    }

    /** Samples of each channel in a file, whatever its head says. */
    static long framesIn(Path file, LiveFormat format) throws IOException {
        return Math.max(0, Files.size(file) - WavHead.BYTES) / format.frameBytes();
    }

    /** Makes the head fit the sound there is; takes off part of a frame at the end. */
    static void mend(Path file, LiveFormat format) throws IOException {
        long frames = framesIn(file, format);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(WavHead.BYTES + frames * format.frameBytes());
            CaptureFile mended = new CaptureFile(channel, format);
            mended.frames = frames;
            mended.close();
        }
    }

    /** Whether another program is writing a file; not for files this program may be writing. */
    static boolean isLocked(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException e) {
            return true;
        }
    }
}
