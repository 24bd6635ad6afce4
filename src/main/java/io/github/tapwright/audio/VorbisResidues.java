package io.github.tapwright.audio;

import static io.github.tapwright.audio.VorbisBits.require;

import java.util.List;

/**
 * Reads on in a Vorbis setup header, from the codebooks to the end of the residues ([VorbisI] sections 4.2.4, 6.2.1, 7.2.2 and 8.6.1).
 *
 * <p>JOrbis reserves room for classifications^dimensions words of every residue before the first sound. No class book can name
 * more of them than it has entries, so a header that asks for more is forged.
 */
final class VorbisResidues {

    private final VorbisBits bits;
    private final List<VorbisCodebooks.Book> books;

    private VorbisResidues(VorbisBits bits, List<VorbisCodebooks.Book> books) {
        this.bits = bits;
        this.books = books;
    }

    /** Refuses residues that are out of proportion to their books. */
    static void check(VorbisBits bits, List<VorbisCodebooks.Book> books) throws DecoderTrouble {
        VorbisResidues residues = new VorbisResidues(bits, books);
        residues.skipTimes();
        residues.skipFloors();
        int count = bits.read(6) + 1;
        for (int i = 0; i < count; i++) {
            residues.checkResidue();
        }
    }

    private void skipTimes() throws DecoderTrouble {
        for (int left = bits.read(6) + 1; left > 0; left--) {
            bits.read(16);
        }
    }

    private void skipFloors() throws DecoderTrouble {
        for (int left = bits.read(6) + 1; left > 0; left--) {
            int type = bits.read(16);
            require(type <= 1);
            if (type == 0) {
                skipFloorOfFilter();
            } else {
                skipFloorOfLines();
            }
        }
    }

    /** Type 0: order, rate, width of the map, bits and height of the amplitude, then its books. */
    private void skipFloorOfFilter() throws DecoderTrouble {
        for (int width : new int[] {8, 16, 16, 6, 8}) {
            bits.read(width);
        }
        for (int left = bits.read(4) + 1; left > 0; left--) {
            bits.read(8);
        }
    }

    /** Type 1: the class of every partition, the classes, then the places of every partition. */
    private void skipFloorOfLines() throws DecoderTrouble {
        int[] classOf = new int[bits.read(5)];
        int classes = 0;
        for (int p = 0; p < classOf.length; p++) {
            classOf[p] = bits.read(4);
            classes = Math.max(classes, classOf[p] + 1);
        }
        int[] dimensions = new int[classes];
        for (int c = 0; c < classes; c++) {
            dimensions[c] = bits.read(3) + 1;
            int subclassBits = bits.read(2);
            if (subclassBits > 0) {
                bits.read(8);
            }
            for (int left = 1 << subclassBits; left > 0; left--) {
                bits.read(8);
            }
        }
        bits.read(2);
        int placeBits = bits.read(4);
        for (int owner : classOf) {
            for (int left = dimensions[owner]; left > 0; left--) {
                bits.read(placeBits);
            }
        }
    }

    private void checkResidue() throws DecoderTrouble {
        require(bits.read(16) <= 2);
        for (int number = 0; number < 3; number++) {
            bits.read(24);
        }
        int classifications = bits.read(6) + 1;
        int classBook = bits.read(8);
        require(classBook < books.size());
        VorbisCodebooks.Book book = books.get(classBook);
        require(Math.pow(classifications, book.dimensions()) <= book.entries());
        int stages = 0;
        for (int c = 0; c < classifications; c++) {
            int low = bits.read(3);
            int high = bits.read(1) == 1 ? bits.read(5) : 0;
            stages += Integer.bitCount(low) + Integer.bitCount(high);
        }
        for (; stages > 0; stages--) {
            bits.read(8);
        }
    }
}
