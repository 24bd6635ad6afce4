package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is a sound file, and what a maker is told when something is not. */
class AudioFileTest {

    @TempDir
    Path folder;

    @Test
    void theContentDecidesNotTheName() throws IOException {
        Path misnamed = folder.resolve("tap.mp3");
        WavWriter.write(misnamed, DecayingSine.mono(44100), WavSamples.INT_16);
        assertThat(Reading.of(misnamed).format().container()).isEqualTo("WAV");
    }

    @Test
    void aMissingFileSaysSo() {
        assertRefused(folder.resolve("nowhere.wav"), "there is no file");
    }

    @Test
    void aFolderSaysSo() {
        assertRefused(folder, "is a folder");
    }

    @Test
    void anEmptyFileSaysSo() throws IOException {
        assertRefused(Files.createFile(folder.resolve("empty.wav")), "the file is empty");
    }

    @Test
    void somethingThatIsNoFileOnDiskSaysSo() {
        assertRefused(Path.of("/dev/null"), "not an ordinary file");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Notes on a top", "x", "RIFF1234AVI LIST", "FORM1234ILBMBODY", "\u00FF\u00D8\u00FF\u00E0 JFIF"})
    void whatIsNotSoundIsRefusedWithARemedy(String content) throws IOException {
        Path file = folder.resolve("other.wav");
        Files.write(file, content.getBytes(StandardCharsets.ISO_8859_1));
        assertRefused(file, "save the sound as WAV or FLAC");
    }

    @Test
    void bareSamplesWithoutAHeaderAreRefused() throws IOException {
        byte[] samples = new byte[4096];
        new Random(7).nextBytes(samples);
        samples[0] = 0;
        assertRefused(Files.write(folder.resolve("bare.raw"), samples), "save the sound as WAV or FLAC");
    }

    @Test
    void otherSoundInOggIsRefusedByName() throws IOException {
        byte[] page = new byte[60];
        System.arraycopy("OggS".getBytes(StandardCharsets.US_ASCII), 0, page, 0, 4);
        page[26] = 1;
        page[27] = 19;
        System.arraycopy("OpusHead".getBytes(StandardCharsets.US_ASCII), 0, page, 28, 8);
        assertRefused(Files.write(folder.resolve("voice.ogg"), page), "Opus");
    }

    @Test
    void aBlockOfTheWrongShapeIsTheCallersMistake() {
        Path file = new WavImage().writeTo(folder);
        try (OpenedAudio audio = AudioFile.open(file)) {
            assertThatThrownBy(() -> audio.read(new double[2][10])).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> audio.read(new double[1][0])).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aClosedSoundIsAtItsEnd() {
        OpenedAudio audio = AudioFile.open(new WavImage().writeTo(folder));
        audio.close();
        assertThat(audio.read(new double[1][8])).isZero();
    }

    @Test
    void aTagBeforeTheSoundIsSkipped() throws IOException {
        byte[] sound = Files.readAllBytes(Fixtures.file("sine-16.flac"));
        byte[] tagged = new byte[10 + 300 + sound.length];
        System.arraycopy(new byte[] {'I', 'D', '3', 4, 0, 0, 0, 0, 2, 44}, 0, tagged, 0, 10);
        System.arraycopy(sound, 0, tagged, 310, sound.length);
        Path file = Files.write(folder.resolve("tagged.flac"), tagged);
        assertThat(Reading.of(file).sound().channel(0)).isEqualTo(DecayingSine.rounded(44100, 16));
    }

    @Test
    void readingLeavesTheFileAsItWas() throws IOException {
        Path copy = folder.resolve("copy.flac");
        Files.copy(Fixtures.file("sine-16.flac"), copy, StandardCopyOption.REPLACE_EXISTING);
        Reading.of(copy);
        assertThat(copy).hasSameBinaryContentAs(Fixtures.file("sine-16.flac"));
    }

    private static void assertRefused(Path file, String reason) {
        assertThatThrownBy(() -> Reading.of(file))
                .isInstanceOf(UnreadableRecordingException.class)
                .hasMessageContaining(reason)
                .hasMessageNotContaining("\n");
    }
}
