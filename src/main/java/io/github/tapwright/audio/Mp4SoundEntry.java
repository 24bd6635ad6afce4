package io.github.tapwright.audio;

import io.github.tapwright.audio.Mp4Boxes.Box;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.List;

/** The sound description of an MP4 track, in search of the AAC decoder's configuration. */
final class Mp4SoundEntry {

    private static final int LIST_HEADER = 8;
    /** Before the boxes inside a sound entry; QuickTime's version 1 has 16 bytes more. */
    private static final int ENTRY_HEADER = 28;

    private static final int QUICKTIME_EXTRA = 16;
    private static final int MOST_BYTES = 1 << 16;
    private static final int DECODER_CONFIG_TAG = 4;
    private static final int SPECIFIC_INFO_TAG = 5;
    private static final int DECODER_CONFIG_BYTES = 13;
    private static final int STREAM_HEADER_BYTES = 3;

    private Mp4SoundEntry() {}

    static byte[] configuration(Mp4Boxes boxes, Box descriptions) throws IOException {
        List<Box> entries = boxes.childrenFrom(descriptions, LIST_HEADER, "mp4a");
        if (entries.isEmpty()) {
            throw new UnreadableRecordingException("the MP4 file's sound is not AAC"
                    + (boxes.childrenFrom(descriptions, LIST_HEADER, "alac").isEmpty() ? "" : " but Apple Lossless")
                    + "; save it as WAV or FLAC");
        }
        Box entry = entries.get(0);
        int version = boxes.body(entry, MOST_BYTES).getShort(8);
        int skipped = version == 1 ? ENTRY_HEADER + QUICKTIME_EXTRA : ENTRY_HEADER;
        List<Box> streams = boxes.childrenFrom(entry, skipped, "esds");
        if (streams.isEmpty()) {
            throw new DecoderTrouble("the MP4 file does not describe its sound");
        }
        return specificInfo(boxes.body(streams.get(0), MOST_BYTES));
    }

    /** Descriptors inside descriptors (ISO/IEC 14496-1 section 7.2.6): stream, decoder, specific info. */
    private static byte[] specificInfo(ByteBuffer esds) throws DecoderTrouble {
        esds.position(4);
        while (esds.remaining() > 2) {
            int tag = esds.get();
            int length = descriptorLength(esds);
            if (tag == SPECIFIC_INFO_TAG) {
                byte[] info = new byte[Math.min(length, esds.remaining())];
                esds.get(info);
                return info;
            }
            int inside = tag == DECODER_CONFIG_TAG ? DECODER_CONFIG_BYTES : STREAM_HEADER_BYTES;
            esds.position(Math.min(esds.limit(), esds.position() + inside));
        }
        throw new DecoderTrouble("the MP4 file does not configure its decoder");
    }

    private static int descriptorLength(ByteBuffer in) {
        int length = 0;
        for (int i = 0; i < 4; i++) {
            int part = in.get();
            length = length << 7 | (part & 0x7F);
            if (part >= 0) {
                break;
            }
        }
        return length;
    }
}
