package io.github.tapwright.audio;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.live.PlayingSound;
import io.github.tapwright.sitting.live.SoundOutput;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** The machine's sound output, as Java's sound system gives it. */
public final class Loudspeaker implements SoundOutput {

    private static final int BITS = 16;
    private static final double BUFFER_SECONDS = 0.2;
    private static final int MOST_CHANNELS = 2;

    @Override
    public PlayingSound play(Recording sound, double gainDb) {
        int channels = Math.min(MOST_CHANNELS, sound.channelCount());
        AudioFormat format = new AudioFormat((float) sound.sampleRate().hertz(), BITS, channels, true, false);
        try {
            SourceDataLine line = AudioSystem.getSourceDataLine(format);
            line.open(format, ((int) (BUFFER_SECONDS * sound.sampleRate().hertz())) * format.getFrameSize());
            return new LinePlaying(line, sound, channels, gainDb);
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
            throw new UnreadableRecordingException(
                    "this machine cannot play the sound (" + e.getMessage()
                            + "); plug in headphones or a loudspeaker, and close other programs that play",
                    e);
        }
    }
}
