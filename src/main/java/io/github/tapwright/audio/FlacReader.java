package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The head of a FLAC file: a marker, then blocks of which only the first kind matters here ([RFC9639] section 8). */
final class FlacReader {

    static final String MARKER = "fLaC";

    private static final int BLOCK_HEADER_BYTES = 4;
    private static final int STREAM_INFO = 0;

    private FlacReader() {}

    static SoundDecoder open(FileBytes file) throws IOException {
        FlacStreamInfo info = FlacStreamInfo.UNKNOWN;
        long at = MARKER.length();
        boolean last = false;
        while (!last) {
            ByteBuffer header = file.at(at, BLOCK_HEADER_BYTES, ByteOrder.BIG_ENDIAN);
            if (header.remaining() < BLOCK_HEADER_BYTES) {
                throw new UnreadableRecordingException(
                        "the FLAC file breaks off before its sound; copy it again from the recorder");
            }
            int word = header.getInt();
            last = word < 0;
            int type = word >> 24 & 0x7F;
            int length = word & 0xFF_FFFF;
            ByteBuffer body =
                    file.at(at + BLOCK_HEADER_BYTES, Math.min(length, FlacStreamInfo.BYTES), ByteOrder.BIG_ENDIAN);
            if (type == STREAM_INFO && body.remaining() == FlacStreamInfo.BYTES) {
                info = FlacStreamInfo.parse(body);
            }
            at += BLOCK_HEADER_BYTES + (long) length;
        }
        return new FlacDecoder(file, at, info);
    }
}
