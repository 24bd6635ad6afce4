package io.github.tapwright.audio;

import static io.github.tapwright.audio.VorbisBits.require;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads the codebooks of a Vorbis setup header ([VorbisI] section 3.2.1) before JOrbis does, which would
 * reserve any memory and try for any time that a forged one asks for.
 */
final class VorbisCodebooks {

    private static final int MAGIC = 0x564342;
    /** All books together; encoders stay below a hundredth of it. */
    private static final long MOST_VALUES = 1 << 22;

    private final VorbisBits bits;
    private final List<Book> books = new ArrayList<>();
    private long values;

    private VorbisCodebooks(VorbisBits bits) {
        this.bits = bits;
    }

    /** How many values an entry has, and how many entries there are. */
    record Book(int dimensions, int entries) {}

    /** Reads to the end of the codebooks, and refuses them where they are out of proportion. */
    static List<Book> read(VorbisBits bits) throws DecoderTrouble {
        VorbisCodebooks all = new VorbisCodebooks(bits);
        int count = bits.read(8) + 1;
        for (int i = 0; i < count; i++) {
            all.checkBook();
        }
        return all.books;
    }

    private void checkBook() throws DecoderTrouble {
        require(bits.read(24) == MAGIC);
        int dimensions = bits.read(16);
        int entries = bits.read(24);
        require(dimensions > 0 && entries > 0);
        values += (long) dimensions * entries;
        require(values <= MOST_VALUES);
        books.add(new Book(dimensions, entries));
        if (bits.read(1) == 1) {
            skipOrderedLengths(entries);
        } else {
            skipLengths(entries);
        }
        skipLookup(dimensions, entries);
    }

    private void skipLengths(int entries) throws DecoderTrouble {
        boolean sparse = bits.read(1) == 1;
        for (int i = 0; i < entries; i++) {
            if (!sparse || bits.read(1) == 1) {
                bits.read(5);
            }
        }
    }

    private void skipOrderedLengths(int entries) throws DecoderTrouble {
        bits.read(5);
        for (int i = 0; i < entries; ) {
            int left = entries - i;
            i += bits.read(Integer.SIZE - Integer.numberOfLeadingZeros(left));
            require(i <= entries);
        }
    }

    private void skipLookup(int dimensions, int entries) throws DecoderTrouble {
        int type = bits.read(4);
        require(type <= 2);
        if (type == 0) {
            return;
        }
        for (int halves = 0; halves < 4; halves++) {
            bits.read(16);
        }
        int valueBits = bits.read(4) + 1;
        bits.read(1);
        int count = type == 1 ? latticeValues(dimensions, entries) : dimensions * entries;
        for (int i = 0; i < count; i++) {
            bits.read(valueBits);
        }
    }

    /** The largest v with v^dimensions ≤ entries. */
    private static int latticeValues(int dimensions, int entries) {
        int v = (int) Math.floor(Math.pow(entries, 1.0 / dimensions));
        while (Math.pow(v + 1, dimensions) <= entries) {
            v++;
        }
        while (Math.pow(v, dimensions) > entries) {
            v--;
        }
        return v;
    }
}
