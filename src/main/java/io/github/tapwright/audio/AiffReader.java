package io.github.tapwright.audio;

import io.github.tapwright.audio.ChunkWalk.Chunk;
import io.github.tapwright.audio.PcmDecoder.PcmLayout;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** AIFF and AIFC files: big-endian chunks, the format in COMM and the sound in SSND, in either order. */
final class AiffReader {

    private static final int FIRST_CHUNK = 12;
    /** Before the samples an SSND chunk says how far to skip, and a block size nobody uses. */
    private static final int SOUND_PREFIX = 8;

    private AiffReader() {}

    static SoundDecoder open(FileBytes file) throws IOException {
        boolean aifc = file.letters(8).equals("AIFC");
        ChunkWalk walk = new ChunkWalk(file, FIRST_CHUNK, ByteOrder.BIG_ENDIAN);
        Optional<AiffFormat> format = Optional.empty();
        Optional<Chunk> sound = Optional.empty();
        for (Optional<Chunk> next = walk.next(); next.isPresent(); next = walk.next()) {
            Chunk chunk = next.get();
            if (chunk.name().equals("COMM")) {
                int length = (int) Math.min(AiffFormat.BYTES, chunk.promisedBytes());
                format = Optional.of(AiffFormat.parse(file.at(chunk.start(), length, ByteOrder.BIG_ENDIAN), aifc));
            } else if (chunk.name().equals("SSND")) {
                sound = Optional.of(chunk);
            }
        }
        return decoder(file, format.orElseThrow(() -> missing("format")), sound.orElseThrow(() -> missing("sound")));
    }

    private static SoundDecoder decoder(FileBytes file, AiffFormat format, Chunk chunk) throws IOException {
        PcmLayout layout = format.layout();
        long skipped =
                SOUND_PREFIX + (file.at(chunk.start(), 4, ByteOrder.BIG_ENDIAN).getInt() & 0xFFFF_FFFFL);
        long start = Math.min(file.size(), chunk.start() + skipped);
        Chunk samples = new Chunk(chunk.name(), start, Math.max(0, chunk.promisedBytes() - skipped));
        SoundExtent extent = SoundExtent.of(file, samples, samples.promisedBytes(), ByteOrder.BIG_ENDIAN);
        List<String> notices = new ArrayList<>(extent.notices());
        if (format.samples() == 0) {
            notices.add("the header counts no samples; they were counted in the file");
            return new PcmDecoder(file, layout, start, extent.end(), OptionalLong.empty(), notices);
        }
        long end = Math.min(extent.end(), start + format.samples() * layout.frameBytes());
        return new PcmDecoder(file, layout, start, end, OptionalLong.of(format.samples()), notices);
    }

    private static UnreadableRecordingException missing(String what) {
        return new UnreadableRecordingException(
                "the AIFF file breaks off before its " + what + " chunk; copy it again from the recorder");
    }
}
