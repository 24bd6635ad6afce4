package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import javazoom.jl.decoder.Bitstream;
import javazoom.jl.decoder.Decoder;
import javazoom.jl.decoder.Header;
import javazoom.jl.decoder.JavaLayerException;
import javazoom.jl.decoder.Obuffer;

/**
 * The frames of an MP3 file, decoded by JLayer.
 *
 * <p>JLayer skips whatever it does not understand without a word, so the frames are counted here from
 * header to header, and its samples are taken before it would clip them to 16 bits.
 */
final class Mp3Frames implements FrameSource {

    /** JLayer multiplies by 32700, to keep clear of its own clipping. */
    private static final double SCALE = 1 / 32700.0;

    private final FileBytes file;
    private final Mp3Header first;
    private final List<String> notices;
    private final Bitstream bits;
    private final Decoder decoder = new Decoder();
    private long position;

    Mp3Frames(FileBytes file, long start, Mp3Header first, List<String> notices) {
        this.file = file;
        this.position = start;
        this.first = first;
        this.notices = notices;
        this.bits = new Bitstream(file.streamFrom(start));
    }

    @Override
    public boolean next(DecodedFrame into) throws IOException {
        Optional<Mp3Header> header = Mp3Header.at(file, position);
        if (header.isEmpty()) {
            noteRest();
            return false;
        }
        if (!header.get().continues(first)) {
            throw new UnreadableRecordingException(
                    "the MP3 sound changes its sample rate or channels on the way; save it as WAV");
        }
        if (position + header.get().frameBytes() > file.size()) {
            notices.add("the MP3 file breaks off inside its last frame, which is left out");
            return false;
        }
        position += header.get().frameBytes();
        decodeFrame(into);
        return true;
    }

    private void decodeFrame(DecodedFrame into) throws IOException {
        into.restart(first.channels());
        decoder.setOutputBuffer(new Collector(into));
        try {
            Header header = bits.readFrame();
            if (header == null) {
                throw new DecoderTrouble("the MP3 decoder finds no more frames");
            }
            decoder.decodeFrame(header, bits);
            bits.closeFrame();
        } catch (JavaLayerException e) {
            throw new DecoderTrouble("an MP3 frame cannot be decoded", e);
        }
        if (into.length() != first.samples()) {
            throw new DecoderTrouble("an MP3 frame gives too few samples");
        }
    }

    /** Tags behind the sound are normal; anything else there means that sound was lost. */
    private void noteRest() throws IOException {
        String rest = file.letters(position);
        boolean tag = rest.isEmpty() || rest.startsWith("TAG") || rest.equals("APET") || rest.startsWith("LYR");
        if (!tag) {
            throw new DecoderTrouble("what follows is no MP3 frame");
        }
    }

    /** Receives 32 samples at a time, before they are clipped. */
    private static final class Collector extends Obuffer {

        private final DecodedFrame into;

        Collector(DecodedFrame into) {
            this.into = into;
        }

        @Override
        public void appendSamples(int channel, float[] samples) {
            into.append(channel, samples, 0, samples.length, SCALE);
        }

        @Override
        public void append(int channel, short value) {
            throw new UnsupportedOperationException("samples come in groups");
        }

        @Override
        public void write_buffer(int value) {
            // nothing is played here
        }

        @Override
        public void close() {
            // nothing is open
        }

        @Override
        public void clear_buffer() {
            // each frame starts afresh
        }

        @Override
        public void set_stop_flag() {
            // nothing is played here
        }
    }
}
