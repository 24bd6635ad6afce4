package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * The frames of a FLAC file, bit for bit ([RFC9639]): every frame must pass its check, follow the one before
 * and keep the first one's format, and the whole must fit the checksum in the header.
 */
final class FlacDecoder implements SoundDecoder {

    private final FileBytes file;
    private final FlacBits in;
    private final FlacStreamInfo info;
    private final SoundFormat format;
    private final int bits;
    private final double scale;
    private final List<String> notices = new ArrayList<>();
    private final FlacFrame frame = new FlacFrame();
    private final FlacChecksum checksum = new FlacChecksum();
    private FlacFrameHeader header;
    private long samplesDecoded;
    private int taken;
    private boolean ended;

    FlacDecoder(FileBytes file, long firstFrame, FlacStreamInfo info) throws IOException {
        this.file = file;
        this.info = info;
        this.in = new FlacBits(file.streamFrom(firstFrame));
        this.header = FlacFrameHeader.read(in, info);
        this.bits = header.bits();
        this.scale = Math.scalb(1.0, 1 - bits);
        this.format = new SoundFormat(
                "FLAC",
                bits + " bit integer",
                Limits.rate(header.rateHz()),
                Limits.channels(header.channels()),
                OptionalInt.of(bits),
                false);
        noteWrongHeader();
        decodeFrame();
    }

    private void noteWrongHeader() {
        if (info.equals(FlacStreamInfo.UNKNOWN)) {
            notices.add("the header is missing; the format was taken from the sound itself");
        } else if (info.bits() != bits || info.channels() != header.channels() || info.rateHz() != header.rateHz()) {
            notices.add("the header's format is wrong (" + info.rateHz() + " Hz, " + info.channels() + " channels, "
                    + info.bits() + " bit); it was taken from the sound itself");
        }
    }

    @Override
    public SoundFormat format() {
        return format;
    }

    @Override
    public OptionalLong promisedSamples() {
        return info.samples() == 0 ? OptionalLong.empty() : OptionalLong.of(info.samples());
    }

    @Override
    public List<String> notices() {
        return List.copyOf(notices);
    }

    @Override
    public int decode(double[][] block) throws IOException {
        if (taken == frame.length() && !nextFrame()) {
            return 0;
        }
        int n = Math.min(block[0].length, frame.length() - taken);
        for (int c = 0; c < block.length; c++) {
            for (int i = 0; i < n; i++) {
                block[c][i] = frame.sample(c, taken + i) * scale;
            }
        }
        taken += n;
        return n;
    }

    private boolean nextFrame() throws IOException {
        if (ended) {
            return false;
        }
        in.restartChecks();
        if (!in.hasMore() || isTail()) {
            ended = true;
            compareChecksum();
            return false;
        }
        FlacFrameHeader previous = header;
        header = FlacFrameHeader.read(in, info);
        requireSameFormat(previous);
        requireNext(previous);
        decodeFrame();
        return true;
    }

    /** Some programs hang tags behind the sound; no frame starts with such a byte. */
    private boolean isTail() throws IOException {
        boolean complete = info.samples() > 0 && samplesDecoded >= info.samples();
        return complete && !in.nextByteIs(0xFF);
    }

    private void decodeFrame() throws IOException {
        frame.decode(in, header);
        checksum.add(frame, header.channels(), bits);
        samplesDecoded += frame.length();
        taken = 0;
    }

    private void requireSameFormat(FlacFrameHeader previous) {
        if (header.rateHz() != previous.rateHz()
                || header.channels() != previous.channels()
                || header.bits() != previous.bits()) {
            throw new UnreadableRecordingException("the sound changes its format after "
                    + Wording.seconds(format.sampleRate().seconds(samplesDecoded))
                    + " (sample rate, channels or bits); save the parts as files of their own");
        }
    }

    private void requireNext(FlacFrameHeader previous) throws DecoderTrouble {
        long step = header.numbersSamples() ? previous.blockSize() : 1;
        if (header.number() != previous.number() + step) {
            throw new DecoderTrouble("a frame is missing");
        }
    }

    private void compareChecksum() {
        if (info.hasChecksum() && !info.md5().equals(checksum.finish())) {
            notices.add("the sound does not fit the checksum stored with it; compare it with another copy");
        }
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
