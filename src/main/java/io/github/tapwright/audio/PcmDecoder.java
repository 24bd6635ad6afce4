package io.github.tapwright.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Samples that lie in the file one after the other, channel by channel: the body of WAV and AIFF. */
final class PcmDecoder implements SoundDecoder {

    private static final int BUFFER_BYTES = 1 << 16;

    private final FileBytes file;
    private final SoundFormat format;
    private final SampleEncoding encoding;
    private final OptionalLong promisedSamples;
    private final List<String> notices;
    private final ByteBuffer buffer;
    private final int frameBytes;
    private final long end;
    private long next;

    /**
     * Samples from {@code start} to {@code end}, which must lie inside the file.
     *
     * @param promisedSamples what the header says, kept to be compared with what comes
     */
    PcmDecoder(
            FileBytes file,
            PcmLayout layout,
            long start,
            long end,
            OptionalLong promisedSamples,
            List<String> notices) {
        this.file = file;
        this.format = layout.format();
        this.encoding = layout.encoding();
        this.promisedSamples = promisedSamples;
        this.notices = new ArrayList<>(notices);
        this.frameBytes = layout.frameBytes();
        this.buffer = ByteBuffer.allocate(Math.max(1, BUFFER_BYTES / frameBytes) * frameBytes)
                .order(layout.byteOrder());
        this.next = start;
        this.end = end;
        noteIncompleteFrame((int) ((end - start) % frameBytes));
    }

    private void noteIncompleteFrame(int bytesLeft) {
        if (bytesLeft > 0) {
            notices.add("the sound breaks off inside its last sample; " + bytesLeft + " bytes are left out");
        }
    }

    @Override
    public SoundFormat format() {
        return format;
    }

    @Override
    public OptionalLong promisedSamples() {
        return promisedSamples;
    }

    @Override
    public List<String> notices() {
        return List.copyOf(notices);
    }

    @Override
    public int decode(double[][] block) throws IOException {
        int wanted = block[0].length;
        int done = 0;
        while (done < wanted) {
            int frames = fillBuffer(wanted - done);
            if (frames == 0) {
                break;
            }
            for (int channel = 0; channel < block.length; channel++) {
                encoding.decoding().run(buffer, channel * encoding.bytes(), frameBytes, block[channel], done, frames);
            }
            done += frames;
        }
        return done;
    }

    private int fillBuffer(int wantedFrames) throws IOException {
        long bytes = Math.min((long) wantedFrames * frameBytes, Math.min(buffer.capacity(), end - next));
        buffer.clear().limit((int) (bytes - bytes % frameBytes));
        file.fill(buffer, next);
        int frames = buffer.position() / frameBytes;
        next += (long) frames * frameBytes;
        return frames;
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    /**
     * How samples are laid out.
     *
     * @param format for the maker
     * @param encoding of each sample
     * @param byteOrder of each sample
     */
    record PcmLayout(SoundFormat format, SampleEncoding encoding, ByteOrder byteOrder) {
        int frameBytes() {
            return encoding.bytes() * format.channelCount();
        }
    }
}
