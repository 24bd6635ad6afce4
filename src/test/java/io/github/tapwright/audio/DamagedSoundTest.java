package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Compressed files that break off or were hurt: the good part is kept, and its end is noticed. */
class DamagedSoundTest {

    @TempDir
    Path folder;

    @Test
    void aFlacFileCutShortKeepsItsGoodPartAndSaysWhatIsMissing() throws IOException {
        byte[] whole = Files.readAllBytes(Fixtures.file("sine-16.flac"));
        Reading reading = Reading.of(write(Arrays.copyOf(whole, whole.length - 100)));
        double[] truth = DecayingSine.rounded(44100, 16);
        int kept = reading.sound().length();
        assertThat(kept).isBetween(4096, truth.length - 1);
        assertThat(reading.sound().channel(0)).isEqualTo(Arrays.copyOf(truth, kept));
        assertThat(reading.notices()).anySatisfy(notice -> assertThat(notice).contains("damaged after"));
        assertThat(reading.notices()).anySatisfy(notice -> assertThat(notice).contains("the header promises 0.3000 s"));
    }

    @Test
    void oneWrongBitInAFlacFrameIsNeverHeard() throws IOException {
        byte[] hurt = Files.readAllBytes(Fixtures.file("sine-16.flac"));
        hurt[hurt.length - 300] ^= 4;
        Reading reading = Reading.of(write(hurt));
        double[] truth = DecayingSine.rounded(44100, 16);
        assertThat(reading.sound().channel(0))
                .isEqualTo(Arrays.copyOf(truth, reading.sound().length()));
        assertThat(reading.notices()).anySatisfy(notice -> assertThat(notice).contains("damaged after"));
    }

    @Test
    void aWrongChecksumOverTheWholeIsNoticed() throws IOException {
        byte[] hurt = Files.readAllBytes(Fixtures.file("sine-16.flac"));
        hurt[4 + 4 + 18] ^= 1;
        Reading reading = Reading.of(write(hurt));
        assertThat(reading.sound().length()).isEqualTo(13230);
        assertThat(reading.notices()).singleElement().asString().contains("checksum");
    }

    @Test
    void aWrongBitDepthInTheHeaderIsCorrectedFromTheSoundAndNoticed() throws IOException {
        byte[] hurt = Files.readAllBytes(Fixtures.file("sine-16.flac"));
        hurt[4 + 4 + 13] ^= (byte) 0x80;
        Reading reading = Reading.of(write(hurt));
        assertThat(reading.sound().channel(0)).isEqualTo(DecayingSine.rounded(44100, 16));
        assertThat(reading.notices()).singleElement().asString().contains("format is wrong");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sine.mp3", "sine.ogg", "sine.m4a", "sine.aac", "sine-24-96k.flac"})
    void aFileCutAtTwoThirdsIsShorterWithANoticeOrRefused(String name) throws IOException {
        byte[] whole = Files.readAllBytes(Fixtures.file(name));
        Path cut = write(Arrays.copyOf(whole, 2 * whole.length / 3));
        int full = Reading.of(Fixtures.file(name)).sound().length();
        try {
            Reading reading = Reading.of(cut);
            assertThat(reading.sound().length()).isLessThan(full);
            assertThat(reading.notices()).isNotEmpty();
        } catch (UnreadableRecordingException e) {
            assertThat(e).hasMessageContaining("save");
        }
    }

    @Test
    void aFlacFileWithoutAnySoundIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(Fixtures.file("sine-16.flac"));
        for (int length : new int[] {4, 20, 42, 90}) {
            Path cut = write(Arrays.copyOf(whole, length));
            assertThatThrownBy(() -> Reading.of(cut)).isInstanceOf(UnreadableRecordingException.class);
        }
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("hurt"), bytes);
    }
}
