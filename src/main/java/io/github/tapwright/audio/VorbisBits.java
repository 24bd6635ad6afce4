package io.github.tapwright.audio;

import com.jcraft.jogg.Buffer;
import com.jcraft.jogg.Packet;

/** The bits of a Vorbis header packet after its name; whoever finds them out of proportion refuses them here. */
final class VorbisBits {

    private static final int PACKET_NAME_BYTES = 7;

    private final Buffer bits = new Buffer();

    VorbisBits(Packet header) {
        bits.readinit(
                header.packet_base, header.packet + PACKET_NAME_BYTES, Math.max(0, header.bytes - PACKET_NAME_BYTES));
    }

    /** The next number, of up to 24 bits; none is left where the packet ends. */
    int read(int width) throws DecoderTrouble {
        int value = width == 0 ? 0 : bits.read(width);
        require(value >= 0);
        return value;
    }

    static void require(boolean holds) throws DecoderTrouble {
        if (!holds) {
            throw new DecoderTrouble("the setup header of the Vorbis sound is damaged");
        }
    }
}
