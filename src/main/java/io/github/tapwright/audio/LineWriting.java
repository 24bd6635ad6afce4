package io.github.tapwright.audio;

import java.util.Optional;
import java.util.function.Consumer;
import javax.sound.sampled.SourceDataLine;

/** A line that is being written to, on a thread of its own. */
final class LineWriting {

    private static final double BLOCK_SECONDS = 0.05;

    private final SourceDataLine line;
    private final PlayedSamples samples;
    private final Consumer<Optional<String>> over;
    private volatile boolean stopped;

    LineWriting(SourceDataLine line, PlayedSamples samples, Consumer<Optional<String>> over) {
        this.line = line;
        this.samples = samples;
        this.over = over;
        Thread writer = new Thread(this::write, "tapwright-playback");
        writer.setDaemon(true);
        writer.start();
    }

    private void write() {
        Optional<String> trouble = Optional.empty();
        int bits = line.getFormat().getSampleSizeInBits();
        int block = (int) Math.ceil(BLOCK_SECONDS * line.getFormat().getSampleRate());
        try {
            line.start();
            for (int n = 0; n < samples.length() && !stopped && trouble.isEmpty(); n += block) {
                byte[] frames = samples.frames(n, Math.min(block, samples.length() - n), bits);
                if (line.write(frames, 0, frames.length) < frames.length && !stopped) {
                    trouble = Optional.of("the sound output broke off; plug it in again and play once more");
                }
            }
            if (!stopped && trouble.isEmpty()) {
                line.drain();
            }
        } finally {
            line.close();
            over.accept(trouble);
        }
    }

    /** What the line still holds is thrown away, so that it is silent at once. */
    void stop() {
        stopped = true;
        line.stop();
        line.flush();
    }
}
