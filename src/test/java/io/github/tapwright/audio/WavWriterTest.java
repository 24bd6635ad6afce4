package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WavWriterTest {

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("written.wav");
    }

    @ParameterizedTest
    @CsvSource({"INT_16,16", "INT_24,24"})
    void integersComeBackRoundedToTheNearest(WavSamples samples, int bits) throws IOException {
        WavWriter.write(file, DecayingSine.mono(48000), samples);
        Reading reading = Reading.of(file);
        assertThat(reading.sound().channel(0)).containsExactly(DecayingSine.rounded(48000, bits));
        assertThat(reading.format().sampleRate()).isEqualTo(new SampleRate(48000));
        assertThat(reading.notices()).isEmpty();
    }

    @Test
    void floatsComeBackInSinglePrecisionBeyondFullScaleToo() throws IOException {
        Recording loud = Recording.of(new SampleRate(96000), new double[] {1.5, -2.75}, new double[] {0.1, 0});
        WavWriter.write(file, loud, WavSamples.FLOAT_32);
        Reading reading = Reading.of(file);
        assertThat(reading.sound().channel(0)).containsExactly(1.5, -2.75);
        assertThat(reading.sound().channel(1)).containsExactly(0.1f, 0);
        assertThat(reading.notices()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = WavSamples.class,
            names = {"INT_16", "INT_24"})
    void aSampleBeyondFullScaleIsRefusedAndNothingIsWritten(WavSamples samples) {
        Recording loud = Recording.of(new SampleRate(8000), new double[] {0, 0, 1.0});
        assertThatThrownBy(() -> WavWriter.write(file, loud, samples))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.0003 s")
                .hasMessageContaining("cannot hold");
        assertThat(file).doesNotExist();
    }

    @Test
    void theLargestIntegersAreNotBeyondFullScale() throws IOException {
        Recording edge = Recording.of(new SampleRate(8000), new double[] {-1, 32767 / 32768.0});
        WavWriter.write(file, edge, WavSamples.INT_16);
        assertThat(Reading.of(file).sound().channel(0)).containsExactly(-1, 32767 / 32768.0);
    }

    @Test
    void notANumberIsRefusedInEveryFormat() {
        Recording broken = Recording.of(new SampleRate(8000), new double[] {Double.NaN});
        for (WavSamples samples : WavSamples.values()) {
            assertThatThrownBy(() -> WavWriter.write(file, broken, samples))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void anExistingFileIsNeverWrittenOver() throws IOException {
        Files.writeString(file, "a maker's only copy");
        assertThatThrownBy(() -> WavWriter.write(file, DecayingSine.mono(8000), WavSamples.INT_16))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(file).hasContent("a maker's only copy");
    }

    @Test
    void aRateThatIsNoWholeNumberIsRefused() {
        Recording odd = Recording.of(new SampleRate(8000.5), new double[] {0});
        assertThatThrownBy(() -> WavWriter.write(file, odd, WavSamples.INT_16)).hasMessageContaining("whole number");
    }

    @Test
    void anOddNumberOfBytesIsPadded() throws IOException {
        WavWriter.write(file, Recording.of(new SampleRate(8000), new double[] {0.5}), WavSamples.INT_24);
        assertThat(Files.size(file)).isEven();
        assertThat(Reading.of(file).sound().channel(0)).containsExactly(0.5);
    }
}
