package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** The head of an MP3 file, which may be a frame that counts the others. */
final class Mp3Reader {

    private static final int DESCRIPTION_BYTES = 12;
    private static final int HAS_FRAME_COUNT = 1;

    private Mp3Reader() {}

    /** Whether it begins with two frames of one sound, or a single one that fills the file. */
    static boolean isMp3(FileBytes file) throws IOException {
        Optional<Mp3Header> first = Mp3Header.at(file, 0);
        if (first.isEmpty()) {
            return false;
        }
        long second = first.get().frameBytes();
        return second == file.size()
                || Mp3Header.at(file, second).filter(first.get()::continues).isPresent();
    }

    static SoundDecoder open(FileBytes file) throws IOException {
        Mp3Header header = Mp3Header.at(file, 0)
                .orElseThrow(() -> new UnreadableRecordingException(
                        "the MP3 file does not start with a frame; save it as WAV or FLAC"));
        SoundFormat format = new SoundFormat(
                "MP3",
                "MPEG layer III",
                Limits.rate(header.rateHz()),
                Limits.channels(header.channels()),
                OptionalInt.empty(),
                true);
        Optional<ByteBuffer> description = description(file, header);
        long firstFrame = description.isPresent() ? header.frameBytes() : 0;
        OptionalLong promised =
                description.map(text -> promisedSamples(text, header)).orElse(OptionalLong.empty());
        List<String> notices = new ArrayList<>();
        Mp3Frames frames = new Mp3Frames(file, firstFrame, header, notices);
        DecodedFrame frame = new DecodedFrame();
        frames.next(frame);
        return new LossyDecoder(file, format, promised, frames, frame, notices);
    }

    /** The "Xing" or "Info" tag that encoders put where the first frame's sound would be. */
    private static Optional<ByteBuffer> description(FileBytes file, Mp3Header header) throws IOException {
        long at = header.descriptionOffset();
        String name = file.letters(at);
        return name.equals("Xing") || name.equals("Info")
                ? Optional.of(file.at(at, DESCRIPTION_BYTES, ByteOrder.BIG_ENDIAN))
                : Optional.empty();
    }

    private static OptionalLong promisedSamples(ByteBuffer description, Mp3Header header) {
        boolean counted =
                description.remaining() == DESCRIPTION_BYTES && (description.getInt(4) & HAS_FRAME_COUNT) != 0;
        return counted
                ? OptionalLong.of((description.getInt(8) & 0xFFFF_FFFFL) * header.samples())
                : OptionalLong.empty();
    }
}
