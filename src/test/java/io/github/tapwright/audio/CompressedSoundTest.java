package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Compressed files of a known sound, made by other people's encoders, against that sound. */
class CompressedSoundTest {

    @TempDir
    Path folder;

    @Test
    void flacGivesEveryBitBack() {
        Reading reading = Reading.of(Fixtures.file("sine-16.flac"));
        assertThat(reading.sound().channel(0)).isEqualTo(DecayingSine.rounded(44100, 16));
        assertThat(reading.format().bitsPerSample()).hasValue(16);
        assertThat(reading.format().lossy()).isFalse();
        assertThat(reading.notices()).isEmpty();
    }

    @Test
    void twentyFourBitFlacKeepsItsLastBit() {
        Reading reading = Reading.of(Fixtures.file("sine-24-96k.flac"));
        assertThat(reading.sound().channel(0)).isEqualTo(DecayingSine.rounded(96000, 24));
        assertThat(reading.format().bitsPerSample()).hasValue(24);
    }

    /**
     * Delays are those of the encoders: LAME 1105 samples (576 of its own, 529 of the decoder's filters),
     * AAC one frame of 1024, Vorbis none. Correlation and gain are limits a little wider than a second
     * decoder found for the same files (MP3 1.00000 and 1.000, Vorbis 0.99999 and 1.007, AAC 0.9997 and
     * 0.992): the loss lies in the files, not in the reading.
     */
    @ParameterizedTest
    @CsvSource({
        "sine.mp3, MP3, 1105, 14976, 0.99999, 0.001",
        "sine.ogg, Ogg, 0, 13230, 0.9999, 0.01",
        "sine.m4a, MP4, 1024, 14336, 0.999, 0.01",
        "sine.aac, AAC (ADTS), 1024, 14336, 0.999, 0.01"
    })
    void lossySoundComesCloseAtItsTrueLevel(
            String name, String container, int delay, int length, double correlation, double gainTolerance) {
        Reading reading = Reading.of(Fixtures.file(name));
        double[] truth = DecayingSine.samples(44100);
        double[] heard = reading.sound().channel(0);

        assertThat(reading.format().container()).isEqualTo(container);
        assertThat(reading.format().lossy()).isTrue();
        assertThat(reading.format().bitsPerSample()).isEmpty();
        assertThat(reading.sound().channelCount()).isEqualTo(1);
        assertThat(reading.sound().sampleRate().hertz()).isEqualTo(44100);
        assertThat(heard).hasSize(length);
        int overlap = Math.min(truth.length, heard.length - delay);
        double cross = product(truth, 0, heard, delay, overlap);
        double own = product(truth, 0, truth, 0, overlap);
        double other = product(heard, delay, heard, delay, overlap);
        assertThat(cross / Math.sqrt(own * other)).isGreaterThan(correlation);
        assertThat(cross / own).isCloseTo(1, within(gainTolerance));
        assertThat(reading.notices()).singleElement().asString().startsWith("lossy: ");
    }

    /** A tag of 300 bytes in front, as taggers write them who know no better, changes no sample. */
    @ParameterizedTest
    @ValueSource(strings = {"sine.mp3", "sine.ogg", "sine.m4a", "sine.aac", "sine-16.flac"})
    void aTagInFrontOfTheSoundIsSkipped(String name) throws IOException {
        Path tagged = tagged(Files.readAllBytes(Fixtures.file(name)), 300);
        assertThat(Reading.of(tagged).sound().channel(0))
                .isEqualTo(Reading.of(Fixtures.file(name)).sound().channel(0));
    }

    @Test
    void aTagInFrontOfAWavFileIsSkipped() throws IOException {
        Recording sine = Recording.of(new SampleRate(44_100), DecayingSine.rounded(44_100, 16));
        Path plain = folder.resolve("plain.wav");
        WavWriter.write(plain, sine, WavSamples.INT_16);
        Path tagged = tagged(Files.readAllBytes(plain), 1001);
        assertThat(Reading.of(tagged).sound().channel(0)).isEqualTo(sine.channel(0));
    }

    @Test
    void aTagWithNothingBehindItIsRefused() throws IOException {
        assertThatExceptionOfType(UnreadableRecordingException.class)
                .isThrownBy(() -> AudioFile.open(tagged(new byte[0], 300)))
                .withMessageContaining("no sound follows it; save the sound again");
        assertThatExceptionOfType(UnreadableRecordingException.class)
                .isThrownBy(() -> AudioFile.open(tagged(new byte[500], 300)))
                .withMessageContaining("save the sound as WAV or FLAC");
    }

    /** The bytes behind an ID3v2.3 tag that holds nothing but padding. */
    private Path tagged(byte[] sound, int padding) throws IOException {
        byte[] tag = new byte[10 + padding];
        System.arraycopy(
                new byte[] {'I', 'D', '3', 3, 0, 0, 0, 0, (byte) (padding >> 7), (byte) (padding & 127)},
                0,
                tag,
                0,
                10);
        Path file = Files.write(folder.resolve("tagged"), tag);
        return Files.write(file, sound, StandardOpenOption.APPEND);
    }

    private static double product(double[] a, int fromA, double[] b, int fromB, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += a[fromA + i] * b[fromB + i];
        }
        return sum;
    }
}
