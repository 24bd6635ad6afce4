package io.github.tapwright.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/** The chunks of a RIFF or IFF file in order, as far as the file really goes. */
final class ChunkWalk {

    /** No sound program writes so many; a file of nothing but empty chunks must not keep us for hours. */
    private static final int MOST_CHUNKS = 10_000;

    private static final int HEADER_BYTES = 8;

    private final FileBytes file;
    private final ByteOrder order;
    private long next;
    private int seen;

    ChunkWalk(FileBytes file, long from, ByteOrder order) {
        this.file = file;
        this.next = from;
        this.order = order;
    }

    /** The next chunk whose name and length are in the file; its body may reach beyond the end. */
    Optional<Chunk> next() throws IOException {
        if (next + HEADER_BYTES > file.size() || ++seen > MOST_CHUNKS) {
            return Optional.empty();
        }
        ByteBuffer header = file.at(next, HEADER_BYTES, order);
        Chunk chunk = new Chunk(file.letters(next), next + HEADER_BYTES, header.getInt(4) & 0xFFFF_FFFFL);
        next = after(chunk);
        return Optional.of(chunk);
    }

    /** Chunks are padded to an even length; a writer that forgot is recognised by the next chunk's name. */
    private long after(Chunk chunk) throws IOException {
        long bare = chunk.start() + chunk.promisedBytes();
        if (chunk.promisedBytes() % 2 == 0) {
            return bare;
        }
        return isName(file.letters(bare)) && !isName(file.letters(bare + 1)) ? bare : bare + 1;
    }

    /** Whether four letters could name a chunk: printable, as all registered names are. */
    static boolean isName(String letters) {
        return letters.length() == 4 && letters.chars().allMatch(letter -> letter >= ' ' && letter <= '~');
    }

    /**
     * A chunk of the file.
     *
     * @param name four letters
     * @param start position of its first byte after name and length
     * @param promisedBytes what its header says, believed by nobody
     */
    record Chunk(String name, long start, long promisedBytes) {}
}
