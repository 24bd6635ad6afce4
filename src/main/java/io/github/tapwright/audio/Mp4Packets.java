package io.github.tapwright.audio;

import io.github.tapwright.audio.Mp4Boxes.Box;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * AAC packets in the first sound track of an MP4 or M4A file: sizes from stsz, chunk positions from stco
 * or co64, packets in each chunk from stsc (ISO/IEC 14496-12 section 8.7).
 */
final class Mp4Packets implements AacPackets {

    /** Enough for the packet table of a day of sound. */
    private static final int MOST_TABLE_BYTES = 1 << 24;
    /** An AAC packet has at most 6144 bits for each channel. */
    private static final int MOST_PACKET_BYTES = 6144 * Limits.MOST_CHANNELS / 8;

    private static final int TABLE_HEADER = 8;

    private final FileBytes file;
    private final byte[] configuration;
    private final ByteBuffer sizes;
    private final ByteBuffer chunks;
    private final ByteBuffer groups;
    private final boolean longOffsets;
    private int packet;
    private int chunk;
    private int group;
    private long leftInChunk;
    private long position;

    Mp4Packets(FileBytes file) throws IOException {
        this.file = file;
        Mp4Boxes boxes = new Mp4Boxes(file);
        Box table = boxes.require(soundTrack(boxes), "minf", "stbl");
        this.configuration = Mp4SoundEntry.configuration(boxes, boxes.require(table, "stsd"));
        this.sizes = boxes.body(boxes.require(table, "stsz"), MOST_TABLE_BYTES);
        this.groups = boxes.body(boxes.require(table, "stsc"), MOST_TABLE_BYTES);
        Optional<Box> shortOffsets = boxes.path(table, "stco");
        this.longOffsets = shortOffsets.isEmpty();
        Box offsets = longOffsets ? boxes.require(table, "co64") : shortOffsets.get();
        this.chunks = boxes.body(offsets, MOST_TABLE_BYTES);
    }

    private static Box soundTrack(Mp4Boxes boxes) throws IOException {
        for (Box track : boxes.children(boxes.require(boxes.whole(), "moov"), "trak")) {
            Optional<Box> media = boxes.path(track, "mdia");
            if (media.isPresent() && boxes.path(media.get(), "minf", "smhd").isPresent()) {
                return media.get();
            }
        }
        throw new UnreadableRecordingException("the MP4 file has no sound; save the sound as WAV or FLAC");
    }

    @Override
    public String container() {
        return "MP4";
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
        if (packet >= sizes.getInt(TABLE_HEADER)) {
            return Optional.empty();
        }
        while (leftInChunk == 0) {
            startChunk();
        }
        int length = packetBytes();
        byte[] bytes = file.bytes(position, length);
        if (bytes.length < length) {
            throw new DecoderTrouble("the sound of the MP4 file is cut short");
        }
        position += length;
        leftInChunk--;
        packet++;
        return Optional.of(bytes);
    }

    private int packetBytes() throws DecoderTrouble {
        int common = sizes.getInt(4);
        int length = common != 0 ? common : sizes.getInt(TABLE_HEADER + 4 + 4 * packet);
        if (length <= 0 || length > MOST_PACKET_BYTES) {
            throw new DecoderTrouble("a packet of the MP4 file has an impossible length");
        }
        return length;
    }

    /** Goes to the next chunk; the groups say from which chunk on how many packets each one holds. */
    private void startChunk() throws DecoderTrouble {
        if (chunk >= chunks.getInt(4)) {
            throw new DecoderTrouble("the MP4 file has fewer chunks than packets need");
        }
        boolean nextGroup = group + 1 < groups.getInt(4) && chunk + 1 >= groups.getInt(groupAt(group + 1));
        if (nextGroup) {
            group++;
        }
        leftInChunk = groups.getInt(groupAt(group) + 4) & 0xFFFF_FFFFL;
        position = longOffsets
                ? chunks.getLong(TABLE_HEADER + 8 * chunk)
                : chunks.getInt(TABLE_HEADER + 4 * chunk) & 0xFFFF_FFFFL;
        chunk++;
    }

    private static int groupAt(int index) {
        return TABLE_HEADER + 12 * index;
    }
}
