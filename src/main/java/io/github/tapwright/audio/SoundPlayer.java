package io.github.tapwright.audio;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.SoundOutput;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.jspecify.annotations.Nullable;

/** The machine's usual sound output, as Java's sound system gives it; 24 bit where it takes them, else 16. */
public final class SoundPlayer implements SoundOutput, AutoCloseable {

    private static final double BUFFER_SECONDS = 0.2;

    private @Nullable LineWriting playing;

    /** A player that is silent. */
    public SoundPlayer() {}

    @Override
    public synchronized void play(Recording sound, double gainDb, Consumer<Optional<String>> over) {
        stop();
        PlayedSamples samples = new PlayedSamples(sound, gainDb);
        AudioFormat format = Stream.of(24, 16)
                .map(bits -> format(sound, bits))
                .filter(f -> AudioSystem.isLineSupported(new DataLine.Info(SourceDataLine.class, f)))
                .findFirst()
                .orElseThrow(() -> new RefusedEntryException("this machine has no sound output for "
                        + Math.round(sound.sampleRate().hertz())
                        + " samples a second; plug in headphones or a loudspeaker and choose them as the system's"
                        + " output"));
        try {
            SourceDataLine line = AudioSystem.getSourceDataLine(format);
            int frames = (int) (BUFFER_SECONDS * format.getSampleRate());
            line.open(format, frames * format.getFrameSize());
            playing = new LineWriting(line, samples, over);
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
            throw new RefusedEntryException("the sound output cannot be opened (" + e.getMessage()
                    + "); close other programs that hold it, or choose another as the system's output");
        }
    }

    private static AudioFormat format(Recording sound, int bits) {
        return new AudioFormat((float) sound.sampleRate().hertz(), bits, sound.channelCount(), true, false);
    }

    @Override
    public synchronized void stop() {
        if (playing != null) {
            playing.stop();
            playing = null;
        }
    }

    @Override
    public void close() {
        stop();
    }
}
