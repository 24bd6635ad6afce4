package io.github.tapwright.microphone;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.Loudspeaker;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.audio.SoundCard;
import io.github.tapwright.recording.Excerpts;
import io.github.tapwright.sitting.SourceRecording;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.PlayBack;
import io.github.tapwright.sitting.live.PlayingSound;
import io.github.tapwright.sitting.live.RunningInput;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;

/** Plays a file while it listens, and prints the loudest sample it heard. A child of tests. */
public final class PlayMain {

    private PlayMain() {}

    /**
     * Plays.
     *
     * @param args a sound file
     */
    public static void main(String[] args) throws InterruptedException {
        PlayBack playBack = new PlayBack(
                file -> {
                    OpenedAudio audio = AudioFile.open(file);
                    return new SourceRecording(audio, "", audio::notices);
                },
                new Loudspeaker());
        double peak = 0;
        try (RunningInput input = new SoundCard().open(Optional.empty(), LiveFormat.STANDARD);
                PlayingSound playing = playBack.play(Path.of(args[0]), new Excerpts.Span(0, 2))) {
            long end = System.nanoTime() + 5_000_000_000L;
            while (System.nanoTime() < end) {
                var block = input.next(Duration.ofMillis(100));
                if (block.isPresent()) {
                    for (double x : block.get().samples()[0]) {
                        peak = Math.max(peak, Math.abs(x));
                    }
                }
            }
            System.out.printf(
                    Locale.ROOT, "peak %.5f over %b seconds %.2f%n", peak, playing.isOver(), playing.seconds());
        }
    }
}
