package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** ID3v2 tags, which some programs put in front of any kind of sound. */
final class LeadingTags {

    private static final int HEADER_BYTES = 10;
    private static final int HAS_FOOTER = 0x10;
    private static final int MOST_TAGS = 100;

    private LeadingTags() {}

    /** The file as it was before any such tag was put in front of it; positions written in it count from there. */
    static FileBytes skipped(FileBytes file) throws IOException {
        long end = end(file);
        if (end > 0 && end >= file.size()) {
            throw new UnreadableRecordingException(
                    "the ID3 tag in front of the sound is as long as the whole file, so no"
                            + " sound follows it; save the sound again as WAV or FLAC");
        }
        return file.from(end);
    }

    private static long end(FileBytes file) throws IOException {
        long at = 0;
        for (int i = 0; i < MOST_TAGS && file.letters(at).startsWith("ID3"); i++) {
            ByteBuffer header = file.at(at, HEADER_BYTES, ByteOrder.BIG_ENDIAN);
            if (header.remaining() < HEADER_BYTES) {
                return at;
            }
            boolean footer = (header.get(5) & HAS_FOOTER) != 0;
            at += HEADER_BYTES + sevenBitBytes(header.getInt(6)) + (footer ? HEADER_BYTES : 0);
        }
        return at;
    }

    /** Four bytes of seven bits each. */
    private static long sevenBitBytes(int word) {
        return (word & 0x7F) | (word >> 1 & 0x3F80) | (word >> 2 & 0x1F_C000) | (word >> 3 & 0xFE0_0000);
    }
}
