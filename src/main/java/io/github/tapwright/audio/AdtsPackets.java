package io.github.tapwright.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import java.util.OptionalLong;

/** AAC packets each behind a header of its own (ADTS, ISO/IEC 13818-7 section 6.2): bare ".aac" files. */
final class AdtsPackets implements AacPackets {

    private static final int HEADER_BYTES = 7;
    private static final int CHECK_BYTES = 2;

    private final FileBytes file;
    private final byte[] configuration;
    private long position;

    AdtsPackets(FileBytes file) throws IOException {
        this.file = file;
        this.configuration = configuration(file.at(0, HEADER_BYTES, ByteOrder.BIG_ENDIAN));
    }

    /** Whether it begins with two such headers of one sound, or one whose packet fills the file. */
    static boolean isAdts(FileBytes file) throws IOException {
        ByteBuffer first = file.at(0, HEADER_BYTES, ByteOrder.BIG_ENDIAN);
        if (!isHeader(first)) {
            return false;
        }
        long second = frameBytes(first);
        return second == file.size() || isHeader(file.at(second, HEADER_BYTES, ByteOrder.BIG_ENDIAN));
    }

    private static boolean isHeader(ByteBuffer bytes) {
        return bytes.remaining() == HEADER_BYTES
                && (bytes.getShort(0) & 0xFFF6) == 0xFFF0
                && frameBytes(bytes) > headerBytes(bytes);
    }

    private static int frameBytes(ByteBuffer header) {
        return (header.get(3) & 3) << 11 | (header.get(4) & 0xFF) << 3 | (header.get(5) & 0xFF) >> 5;
    }

    private static int headerBytes(ByteBuffer header) {
        return (header.get(1) & 1) == 1 ? HEADER_BYTES : HEADER_BYTES + CHECK_BYTES;
    }

    /** Object type, rate and channels of the header, written as an AudioSpecificConfig. */
    private static byte[] configuration(ByteBuffer header) {
        int objectType = (header.get(2) >> 6 & 3) + 1;
        int rateIndex = header.get(2) >> 2 & 15;
        int channels = (header.get(2) & 1) << 2 | (header.get(3) >> 6 & 3);
        int packed = objectType << 11 | rateIndex << 7 | channels << 3;
        return new byte[] {(byte) (packed >> 8), (byte) packed};
    }

    @Override
    public String container() {
        return "AAC (ADTS)";
    }

    @Override
    public byte[] configuration() {
        return configuration.clone();
    }

    @Override
    public OptionalLong promisedSamples() {
        return OptionalLong.empty();
    }

    @Override
    public Optional<byte[]> next() throws IOException {
        if (position == file.size() || file.letters(position).startsWith("TAG")) {
            return Optional.empty();
        }
        ByteBuffer header = file.at(position, HEADER_BYTES, ByteOrder.BIG_ENDIAN);
        if (!isHeader(header)) {
            throw new DecoderTrouble("what follows is no AAC packet");
        }
        int length = frameBytes(header) - headerBytes(header);
        byte[] packet = file.bytes(position + headerBytes(header), length);
        if (packet.length < length) {
            throw new DecoderTrouble("the last AAC packet is cut short");
        }
        position += frameBytes(header);
        return Optional.of(packet);
    }
}
