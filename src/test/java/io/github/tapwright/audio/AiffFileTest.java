package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each way of storing samples in AIFF and AIFC. */
class AiffFileTest {

    @TempDir
    Path folder;

    /** Half of full scale up, a quarter down, and the most negative integer, in each encoding. */
    @ParameterizedTest
    @CsvSource({
        "'', 8, 40E080, AIFF",
        "'', 16, 4000E0008000, AIFF",
        "'', 12, 4000E0008000, AIFF",
        "'', 24, 400000E00000800000, AIFF",
        "'', 32, 40000000E000000080000000, AIFF",
        "NONE, 16, 4000E0008000, AIFC",
        "twos, 16, 4000E0008000, AIFC",
        "sowt, 16, 004000E00080, AIFC",
        "sowt, 24, 0000400000E0000080, AIFC",
        "in24, 24, 400000E00000800000, AIFC",
        "in32, 32, 40000000E000000080000000, AIFC",
        "42ni, 24, 0000400000E0000080, AIFC",
        "23ni, 32, 00000040000000E000000080, AIFC",
        "'raw ', 8, C06000, AIFC",
        "fl32, 32, 3F000000BE800000BF800000, AIFC",
        "FL32, 32, 3F000000BE800000BF800000, AIFC",
        "fl64, 64, 3FE0000000000000BFD0000000000000BFF0000000000000, AIFC"
    })
    void everyEncodingReadsBackExactly(String compression, int bits, String hex, String container) throws IOException {
        byte[] sound = HexFormat.of().parseHex(hex);
        Reading reading = Reading.of(write(AiffImage.of(compression, bits, sound, 3)));
        assertThat(reading.sound().channel(0)).containsExactly(0.5, -0.25, -1);
        assertThat(reading.sound().sampleRate().hertz()).isEqualTo(44100);
        assertThat(reading.format().container()).isEqualTo(container);
        assertThat(reading.notices()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ulaw", "alaw"})
    void compandedSoundIsReadAndCalledLossy(String compression) throws IOException {
        Reading reading = Reading.of(write(AiffImage.of(compression, 8, new byte[] {(byte) 0x80, 0}, 2)));
        assertThat(reading.format().lossy()).isTrue();
        assertThat(reading.sound().length()).isEqualTo(2);
    }

    @Test
    void aPromiseBeyondTheFileIsNoticed() throws IOException {
        Reading reading = Reading.of(write(AiffImage.of("", 16, new byte[200], 44100)));
        assertThat(reading.sound().length()).isEqualTo(100);
        assertThat(reading.notices()).singleElement().asString().contains("promises 1.0 s");
    }

    @Test
    void aHeaderThatCountsNothingIsNoticedAndTheSoundKept() throws IOException {
        Reading reading = Reading.of(write(AiffImage.of("", 16, new byte[200], 0)));
        assertThat(reading.sound().length()).isEqualTo(100);
        assertThat(reading.notices()).singleElement().asString().contains("counts no samples");
    }

    @Test
    void compressedSoundIsRefusedWithARemedy() throws IOException {
        Path file = write(AiffImage.of("ima4", 16, new byte[34], 64));
        assertThatThrownBy(() -> Reading.of(file))
                .isInstanceOf(UnreadableRecordingException.class)
                .hasMessageContaining("ima4")
                .hasMessageContaining("FLAC");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 33})
    void impossibleBitsAreRefused(int bits) throws IOException {
        Path file = write(AiffImage.of("", bits, new byte[8], 2));
        assertThatThrownBy(() -> Reading.of(file)).hasMessageContaining(bits + " bits");
    }

    @Test
    void eightyBitNumbersAreReadExactly() {
        assertThat(AiffFormat.extended((short) 0x400E, 48000L << 48)).isEqualTo(48000);
        assertThat(AiffFormat.extended((short) 0x3FFF, Long.MIN_VALUE)).isEqualTo(1);
        assertThat(AiffFormat.extended((short) 0xBFFF, Long.MIN_VALUE)).isEqualTo(-1);
        assertThat(AiffFormat.extended((short) 0, 0)).isZero();
        assertThat(AiffFormat.extended((short) 0x7FFF, 0)).isInfinite();
    }

    @Test
    void aRateOfNothingIsRefused() throws IOException {
        byte[] bytes = AiffImage.of("", 16, new byte[8], 4);
        ByteBuffer.wrap(bytes).putShort(12 + 12 + 8 + 8, (short) 0);
        Path file = write(bytes);
        assertThatThrownBy(() -> Reading.of(file)).hasMessageContaining("samples a second");
    }

    private Path write(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("sound.aiff"), bytes);
    }
}
