package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever happens to the bytes of a sound file, reading it ends, gives numbers only and fails with nothing
 * but our own refusal.
 */
class DamagedSoundPropertyTest {

    private static final int MUTATIONS = 250;
    /** A stuck decoder would never end; a healthy one needs a few seconds for all mutations together. */
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"sine-16.flac", "sine-24-96k.flac", "sine.mp3", "sine.ogg", "sine.m4a", "sine.aac"})
    void damagedCompressedFilesNeverDoWorseThanARefusal(String name) throws IOException {
        survives(Files.readAllBytes(Fixtures.file(name)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"RIFF", "RIFX", "RF64"})
    void damagedWavFilesNeverDoWorseThanARefusal(String kind) {
        WavImage image = new WavImage();
        image.kind = kind;
        image.validBits = 16;
        image.before = image.chunk("LIST", 5, new byte[5]);
        survives(image.sound(new byte[400]).bytes());
    }

    @Test
    void damagedAiffFilesNeverDoWorseThanARefusal() {
        survives(AiffImage.of("fl32", 32, new byte[400], 100));
    }

    private void survives(byte[] original) {
        Assertions.assertTimeoutPreemptively(PATIENCE, () -> {
            for (int seed = 0; seed < MUTATIONS; seed++) {
                readOrRefuse(mutated(original, new Random(seed)), seed);
            }
        });
    }

    /** A few bytes changed, most near the front where headers are; now and then the end cut off. */
    private static byte[] mutated(byte[] original, Random random) {
        byte[] bytes = original.clone();
        int reach = random.nextInt(3) == 0 ? bytes.length : Math.min(bytes.length, 100);
        for (int changes = 1 + random.nextInt(6); changes > 0; changes--) {
            byte extreme = (byte) (random.nextBoolean() ? 0 : -1);
            byte any = (byte) random.nextInt(256);
            bytes[random.nextInt(reach)] = random.nextInt(4) == 0 ? extreme : any;
        }
        boolean cut = random.nextInt(10) == 0;
        return cut ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : OggChecksums.repaired(bytes);
    }

    private void readOrRefuse(byte[] bytes, int seed) throws IOException {
        Path file = Files.write(folder.resolve("mutated"), bytes);
        try {
            Reading reading = Reading.of(file);
            assertThat(reading.sound().length()).as("seed %d", seed).isPositive();
            boolean numbers = Arrays.stream(reading.sound().channel(0)).allMatch(Double::isFinite);
            assertThat(numbers).as("seed %d", seed).isTrue();
        } catch (UnreadableRecordingException e) {
            assertThat(e.getMessage()).as("seed %d", seed).isNotBlank().doesNotContain("\n");
        }
    }
}
