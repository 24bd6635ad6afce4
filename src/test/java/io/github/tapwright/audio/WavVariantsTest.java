package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each way of storing samples in a WAV file, read back to the exact sample. */
class WavVariantsTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"RIFF,-1", "RIFX,-1", "RF64,-1", "RIFF,1", "RIFX,1"})
    void everyIntegerWidthReadsBackExactly(String kind, int extensible) {
        for (int bytes = 1; bytes <= 8; bytes++) {
            WavImage image = new WavImage();
            image.kind = kind;
            image.validBits = extensible < 0 ? -1 : 8 * bytes;
            int known = Math.min(8 * bytes, 32);
            double[] sine = DecayingSine.rounded(44100, known);
            image.samples(8 * bytes, bytes).sound(integers(sine, bytes, !kind.equals("RIFX")));

            Reading reading = Reading.of(image.writeTo(folder));

            assertThat(reading.sound().channel(0)).as("%d bytes", bytes).containsExactly(sine);
            assertThat(reading.format().bitsPerSample()).hasValue(8 * bytes);
            assertThat(reading.format().lossy()).isFalse();
            assertThat(reading.notices()).isEmpty();
        }
    }

    /** Integers of any width, upper bits first filled; a single byte is stored with an offset of 128. */
    private static byte[] integers(double[] samples, int bytes, boolean little) {
        ByteBuffer out = ByteBuffer.allocate(samples.length * bytes);
        for (double sample : samples) {
            long value = (long) (sample * 0x1p62) << 1;
            for (int i = 0; i < bytes; i++) {
                int fromTop = little ? bytes - 1 - i : i;
                out.put((byte) (value >> (56 - 8 * fromTop)));
            }
        }
        if (bytes == 1) {
            for (int i = 0; i < out.capacity(); i++) {
                out.put(i, (byte) (out.get(i) + 128));
            }
        }
        return out.array();
    }

    @ParameterizedTest
    @CsvSource({"RIFF", "RIFX"})
    void floatsBeyondFullScaleAreKeptAsTheyAre(String kind) {
        ByteOrder order = kind.equals("RIFX") ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
        WavImage single = new WavImage();
        single.kind = kind;
        single.tag = 3;
        single.samples(32, 4)
                .sound(ByteBuffer.allocate(8)
                        .order(order)
                        .putFloat(1.5f)
                        .putFloat(-0.25f)
                        .array());
        assertThat(Reading.of(single.writeTo(folder)).sound().channel(0)).containsExactly(1.5, -0.25);

        WavImage twice = new WavImage();
        twice.kind = kind;
        twice.tag = 3;
        twice.samples(64, 8)
                .sound(ByteBuffer.allocate(16)
                        .order(order)
                        .putDouble(-7.125)
                        .putDouble(0.1)
                        .array());
        assertThat(Reading.of(twice.writeTo(folder)).sound().channel(0)).containsExactly(-7.125, 0.1);
    }

    @Test
    void oddBitsSitAtTheUpperEndOfTheirBytes() {
        WavImage twelve = new WavImage();
        twelve.samples(12, 2).sound(bytes("F07F 0080 1000"));
        Reading reading = Reading.of(twelve.writeTo(folder));
        assertThat(reading.sound().channel(0)).containsExactly(2047 / 2048.0, -1, 1 / 2048.0);
        assertThat(reading.format().bitsPerSample()).hasValue(12);

        WavImage twenty = new WavImage();
        twenty.validBits = 20;
        twenty.samples(24, 3).sound(bytes("F0FF7F 000080"));
        reading = Reading.of(twenty.writeTo(folder));
        assertThat(reading.sound().channel(0)).containsExactly(524287 / 524288.0, -1);
        assertThat(reading.format().bitsPerSample()).hasValue(20);
    }

    @Test
    void twentyFourBitsInFourBytesAreReadAtEitherEndAndTheWrongEndIsNoticed() {
        WavImage upper = new WavImage();
        upper.samples(24, 4).sound(bytes("00FFFF7F 00000080"));
        assertThat(Reading.of(upper.writeTo(folder)).sound().channel(0)).containsExactly(8388607 / 8388608.0, -1);

        WavImage lower = new WavImage();
        lower.samples(24, 4).sound(bytes("FFFF7F00 000080FF A0FFFF00"));
        Reading reading = Reading.of(lower.writeTo(folder));
        assertThat(reading.sound().channel(0)).containsExactly(8388607 / 8388608.0, -1, -96 / 8388608.0);
        assertThat(reading.notices()).singleElement().asString().contains("lower bytes");
    }

    @Test
    void channelsComeApartInOrder() {
        WavImage image = new WavImage();
        image.channels = 3;
        image.samples(16, 2).sound(bytes("0040 00C0 0020  0010 00F0 0008"));
        Reading reading = Reading.of(image.writeTo(folder));
        assertThat(reading.sound().channel(0)).containsExactly(0.5, 0.125);
        assertThat(reading.sound().channel(1)).containsExactly(-0.5, -0.125);
        assertThat(reading.sound().channel(2)).containsExactly(0.25, 0.0625);
    }

    /**
     * The largest values of the two laws on 16 bit integers, 32124 and 32256, and their smallest; [G711]
     * gives the laws, the scaling to 16 bit is common practice. From memory, to be verified; a second decoder
     * (FFmpeg) gives the same for all 256 codes of both laws.
     */
    @Test
    void compandedSamplesFollowTheirLaws() {
        WavImage mu = new WavImage();
        mu.tag = 7;
        mu.samples(8, 1).sound(bytes("80 00 FF FE"));
        Reading reading = Reading.of(mu.writeTo(folder));
        assertThat(reading.sound().channel(0)).containsExactly(32124 / 32768.0, -32124 / 32768.0, 0, 8 / 32768.0);
        assertThat(reading.format().lossy()).isTrue();

        WavImage a = new WavImage();
        a.tag = 6;
        a.samples(8, 1).sound(bytes("AA 2A D5 55"));
        assertThat(Reading.of(a.writeTo(folder)).sound().channel(0))
                .containsExactly(32256 / 32768.0, -32256 / 32768.0, 8 / 32768.0, -8 / 32768.0);
    }

    @Test
    void blocksOfAnyLengthGiveTheSameSamples() {
        double[] sine = DecayingSine.rounded(44100, 16);
        WavImage image = new WavImage();
        Path file = image.sound(integers(sine, 2, true)).writeTo(folder);
        try (OpenedAudio audio = AudioFile.open(file)) {
            double[][] block = new double[1][7];
            int at = 0;
            for (int n = audio.read(block); n > 0; n = audio.read(block)) {
                for (int i = 0; i < n; i++) {
                    assertThat(block[0][i]).isCloseTo(sine[at++], within(0.0));
                }
            }
            assertThat(at).isEqualTo(sine.length);
            assertThat(audio.read(block)).isZero();
        }
    }

    private static byte[] bytes(String hex) {
        return HexFormat.of().parseHex(hex.replace(" ", ""));
    }
}
