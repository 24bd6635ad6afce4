package io.github.tapwright.audio;

import io.github.tapwright.audio.ChunkWalk.Chunk;
import io.github.tapwright.audio.PcmDecoder.PcmLayout;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** WAV files: RIFF, its big-endian sister RIFX, and RF64/BW64 for more than 4 GB. */
final class WavReader {

    private static final int FIRST_CHUNK = 12;
    private static final long IN_DS64 = 0xFFFF_FFFFL;
    private static final int DS64_BYTES = 16;

    private final FileBytes file;
    private final String container;
    private final ByteOrder order;
    private Optional<WavFormat> format = Optional.empty();
    private Optional<Chunk> sound = Optional.empty();
    private OptionalLong longSize = OptionalLong.empty();

    private WavReader(FileBytes file, String kind) {
        this.file = file;
        this.container = kind.equals("RIFF") ? "WAV" : "WAV (" + kind + ")";
        this.order = kind.equals("RIFX") ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
    }

    static SoundDecoder open(FileBytes file) throws IOException {
        WavReader reader = new WavReader(file, file.letters(0));
        reader.readHeader();
        return reader.decoder();
    }

    private void readHeader() throws IOException {
        ChunkWalk walk = new ChunkWalk(file, FIRST_CHUNK, order);
        for (Optional<Chunk> next = walk.next(); next.isPresent() && !complete(); next = walk.next()) {
            Chunk chunk = next.get();
            switch (chunk.name()) {
                case "fmt " -> format = Optional.of(WavFormat.parse(body(chunk, WavFormat.BYTES)));
                case "ds64" -> longSize = longSize(body(chunk, DS64_BYTES));
                case "data" -> sound = Optional.of(chunk);
                default -> {
                    // names, dates, cue points: not sound
                }
            }
        }
    }

    private boolean complete() {
        return format.isPresent() && sound.isPresent();
    }

    private ByteBuffer body(Chunk chunk, int most) throws IOException {
        return file.at(chunk.start(), (int) Math.min(most, chunk.promisedBytes()), order);
    }

    private static OptionalLong longSize(ByteBuffer ds64) {
        return ds64.remaining() < DS64_BYTES ? OptionalLong.empty() : OptionalLong.of(ds64.getLong(8));
    }

    private SoundDecoder decoder() throws IOException {
        WavFormat believed = format.orElseThrow(() -> missing("format"));
        Chunk chunk = sound.orElseThrow(() -> missing("sound"));
        long promised = chunk.promisedBytes() == IN_DS64 ? longSize.orElse(IN_DS64) : chunk.promisedBytes();
        PcmLayout layout = believed.layout(container, order);
        SoundExtent extent = SoundExtent.of(file, chunk, promised, order);
        List<String> notices = new ArrayList<>(extent.notices());
        if (!believed.byteRateAgrees()) {
            notices.add("the header's bytes per second do not fit its sample rate of " + believed.rateHz()
                    + " Hz; if frequencies look wrong, the rate is");
        }
        if (PaddedSamples.sitLow(file, layout, chunk.start(), extent.end())) {
            layout = PaddedSamples.low(layout);
            notices.add("its 24 bit samples sit in the lower bytes of 32 bit words, against the format's rule");
        }
        OptionalLong samples = extent.promisedBytes().isPresent()
                ? OptionalLong.of(extent.promisedBytes().getAsLong() / layout.frameBytes())
                : OptionalLong.empty();
        return new PcmDecoder(file, layout, chunk.start(), extent.end(), samples, notices);
    }

    private static UnreadableRecordingException missing(String what) {
        return new UnreadableRecordingException(
                "the WAV file breaks off before its " + what + " chunk; copy it again from the recorder");
    }
}
