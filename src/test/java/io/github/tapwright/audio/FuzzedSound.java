package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Any bytes read as a sound file from end to end, the way the program does it. */
final class FuzzedSound {

    private static final int BLOCK = 4096;

    /** A few bytes of FLAC may stand for hours of honest silence; how much of it is wanted is the reader's affair. */
    private static final long MOST_SAMPLES = 2_000_000;

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(UnreadableRecordingException.class));

    private static final Path FILE = temporary();

    private FuzzedSound() {}

    static void readsOrRefuses(byte[] bytes) {
        BOUNDS.hold(bytes.length, () -> {
            Files.write(FILE, bytes);
            try (OpenedAudio audio = AudioFile.open(FILE)) {
                readToTheEnd(audio);
                assertThat(audio.notices()).noneMatch(n -> n.isBlank() || n.contains("\n"));
            } catch (UnreadableRecordingException e) {
                assertThat(e.getMessage()).doesNotContain("\n");
                throw e;
            }
        });
    }

    private static void readToTheEnd(OpenedAudio audio) {
        double[][] block = new double[audio.channelCount()][BLOCK];
        long total = 0;
        int n;
        do {
            n = audio.read(block);
            assertThat(n).isBetween(0, BLOCK);
            total += n;
        } while (n > 0 && total * block.length < MOST_SAMPLES);
    }

    private static Path temporary() {
        try {
            Path file = Files.createTempFile("fuzzed", ".sound");
            file.toFile().deleteOnExit();
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
