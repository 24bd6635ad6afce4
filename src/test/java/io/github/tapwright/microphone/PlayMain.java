package io.github.tapwright.microphone;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.audio.SoundCard;
import io.github.tapwright.audio.SoundPlayer;
import io.github.tapwright.recording.Excerpts;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.RunningInput;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** Plays the first two seconds of a file while it listens, and prints the loudest sample it heard. A child of tests. */
public final class PlayMain {

    private PlayMain() {}

    /** The file and the gain in decibels. */
    public static void main(String[] args) throws Exception {
        Recording cut;
        try (OpenedAudio audio = AudioFile.open(Path.of(args[0]))) {
            cut = new Excerpts(audio, List.of(new Excerpts.Span(0, 2))).next();
        }
        double peak = 0;
        CompletableFuture<Optional<String>> over = new CompletableFuture<>();
        try (RunningInput input = new SoundCard().open(Optional.empty(), LiveFormat.STANDARD);
                SoundPlayer player = new SoundPlayer()) {
            player.play(cut, Double.parseDouble(args[1]), over::complete);
            long end = System.nanoTime() + 5_000_000_000L;
            while (System.nanoTime() < end) {
                var block = input.next(Duration.ofMillis(100));
                if (block.isPresent()) {
                    for (double x : block.get().samples()[0]) {
                        peak = Math.max(peak, Math.abs(x));
                    }
                }
            }
            System.out.printf(Locale.ROOT, "peak %.5f over %s%n", peak, over.getNow(Optional.of("still playing")));
        }
    }
}
