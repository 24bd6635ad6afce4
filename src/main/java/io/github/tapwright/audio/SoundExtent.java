package io.github.tapwright.audio;

import io.github.tapwright.audio.ChunkWalk.Chunk;
import java.io.IOException;
import java.nio.ByteOrder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Where the sound of a chunk really lies, whatever its header promises.
 *
 * @param end position after its last byte, inside the file
 * @param promisedBytes what the header promises, if it makes a promise
 * @param notices what was odd
 */
record SoundExtent(long end, OptionalLong promisedBytes, List<String> notices) {

    /** Written by recorders as "I do not know yet", and left so when their power fails. */
    private static final long UNKNOWN = 0xFFFF_FFFFL;

    /**
     * Compares the header's promise with the file.
     *
     * @param promisedBytes the chunk's own length, or the 64 bit length that stands for it
     */
    static SoundExtent of(FileBytes file, Chunk chunk, long promisedBytes, ByteOrder order) throws IOException {
        long available = file.size() - chunk.start();
        boolean unset = promisedBytes == UNKNOWN && available < UNKNOWN;
        boolean forgotten = promisedBytes == 0 && available > 0 && !chunksFollow(file, chunk.start(), order);
        if (unset || forgotten || promisedBytes < 0) {
            return new SoundExtent(
                    file.size(),
                    OptionalLong.empty(),
                    List.of("the header does not say how long the sound is; it was read to the end of the file"));
        }
        long end = chunk.start() + Math.min(promisedBytes, available);
        return new SoundExtent(end, OptionalLong.of(promisedBytes), List.of());
    }

    /** Whether the rest of the file is a clean row of chunks, so that an empty sound is truly empty. */
    private static boolean chunksFollow(FileBytes file, long from, ByteOrder order) throws IOException {
        ChunkWalk walk = new ChunkWalk(file, from, order);
        long end = from;
        for (Optional<Chunk> next = walk.next(); next.isPresent(); next = walk.next()) {
            Chunk chunk = next.get();
            end = chunk.start() + chunk.promisedBytes();
            if (!ChunkWalk.isName(chunk.name()) || end > file.size()) {
                return false;
            }
        }
        return file.size() - end <= 1;
    }
}
