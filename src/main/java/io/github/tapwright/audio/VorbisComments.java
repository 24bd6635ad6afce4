package io.github.tapwright.audio;

import com.jcraft.jogg.Packet;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Checks the lengths in a Vorbis comment header ([VorbisI] section 5.2.1), for which JOrbis would reserve
 * memory before it looks whether the packet holds so much.
 */
final class VorbisComments {

    private static final int PACKET_NAME_BYTES = 7;

    private VorbisComments() {}

    static void check(Packet comments) throws DecoderTrouble {
        ByteBuffer bytes = ByteBuffer.wrap(comments.packet_base, comments.packet, comments.bytes)
                .order(ByteOrder.LITTLE_ENDIAN);
        try {
            skip(bytes, PACKET_NAME_BYTES);
            skip(bytes, bytes.getInt());
            for (int left = bytes.getInt(); left != 0; left--) {
                skip(bytes, bytes.getInt());
            }
        } catch (BufferUnderflowException e) {
            throw new DecoderTrouble("the comments of the Vorbis sound are damaged", e);
        }
    }

    private static void skip(ByteBuffer bytes, int length) {
        if (length < 0 || length > bytes.remaining()) {
            throw new BufferUnderflowException();
        }
        bytes.position(bytes.position() + length);
    }
}
