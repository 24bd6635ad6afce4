package io.github.tapwright.audio;

import java.io.IOException;
import java.util.List;
import java.util.OptionalLong;

/** Compressed sound from a library, frame by frame. */
final class LossyDecoder implements SoundDecoder {

    private final FileBytes file;
    private final SoundFormat format;
    private final OptionalLong promisedSamples;
    private final FrameSource source;
    private final DecodedFrame frame;
    private final List<String> notices;

    /**
     * Decoder of a sound whose first frame is already there.
     *
     * @param frame the first decoded frame
     * @param notices grows while the source is read
     */
    LossyDecoder(
            FileBytes file,
            SoundFormat format,
            OptionalLong promisedSamples,
            FrameSource source,
            DecodedFrame frame,
            List<String> notices) {
        this.file = file;
        this.format = format;
        this.promisedSamples = promisedSamples;
        this.source = source;
        this.frame = frame;
        this.notices = notices;
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
        return frame.isUsedUp() && !source.next(frame) ? 0 : frame.drain(block);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
