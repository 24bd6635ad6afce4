package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compressed files of a known sound, made by other people's encoders, against that sound. */
class CompressedSoundTest {

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
        assertThat(reading.notices()).isEmpty();
    }

    private static double product(double[] a, int fromA, double[] b, int fromB, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += a[fromA + i] * b[fromB + i];
        }
        return sum;
    }
}
