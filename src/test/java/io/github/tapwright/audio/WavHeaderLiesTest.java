package io.github.tapwright.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Headers that promise what the file does not hold, as crashed recorders and careless programs leave them. */
class WavHeaderLiesTest {

    @TempDir
    Path folder;

    private final WavImage image = new WavImage();

    @ParameterizedTest
    @ValueSource(longs = {0, 0xFFFF_FFFFL})
    void anUnknownLengthMeansToTheEndOfTheFile(long stated) {
        image.statedSoundBytes = stated;
        Reading reading = Reading.of(image.writeTo(folder));
        assertThat(reading.sound().length()).isEqualTo(4);
        assertThat(reading.notices()).singleElement().asString().contains("does not say how long");
    }

    @Test
    void aPromiseBeyondTheFileIsNoticedAndNothingIsPadded() {
        image.sound = new byte[2 * 141120];
        image.statedSoundBytes = 2 * 441000L;
        Reading reading = Reading.of(image.writeTo(folder));
        assertThat(reading.sound().length()).isEqualTo(141120);
        assertThat(reading.notices()).containsExactly("the header promises 10.0 s, the file holds 3.2 s");
    }

    @Test
    void aPromiseOfFourGigabytesNeedsNoMemory() {
        image.kind = "RF64";
        image.statedSoundBytes = Long.MAX_VALUE / 2;
        Reading reading = Reading.of(image.writeTo(folder));
        assertThat(reading.sound().length()).isEqualTo(4);
        assertThat(reading.notices()).hasSize(1);
    }

    @Test
    void aFewMissingSamplesAreCounted() {
        image.statedSoundBytes = image.sound.length + 4L;
        assertThat(Reading.of(image.writeTo(folder)).notices())
                .singleElement()
                .asString()
                .contains("2 samples fewer");
    }

    @Test
    void bytesOfAnIncompleteLastSampleAreLeftOutAndNoticed() {
        image.channels = 2;
        image.samples(16, 2).sound(new byte[] {0, 64, 0, -64, 1});
        image.statedSoundBytes = 5;
        Reading reading = Reading.of(image.writeTo(folder));
        assertThat(reading.sound().channel(0)).containsExactly(0.5);
        assertThat(reading.sound().channel(1)).containsExactly(-0.5);
        assertThat(reading.notices()).singleElement().asString().contains("inside its last sample");
    }

    @Test
    void otherChunksAroundTheSoundAreNotSound() {
        image.before = image.chunk("LIST", 3, new byte[] {1, 2, 3});
        image.after = image.chunk("cue ", 6, new byte[] {9, 9, 9, 9, 9, 9});
        Reading reading = Reading.of(image.writeTo(folder));
        assertThat(reading.sound().length()).isEqualTo(4);
        assertThat(reading.notices()).isEmpty();
    }

    @Test
    void aForgottenPadByteDoesNotLoseTheSound() {
        byte[] padded = image.chunk("LIST", 3, new byte[] {1, 2, 3});
        image.before = Arrays.copyOf(padded, padded.length - 1);
        assertThat(Reading.of(image.writeTo(folder)).sound().length()).isEqualTo(4);
    }

    @Test
    void anEmptySoundBeforeOtherChunksIsTrulyEmpty() {
        image.sound = new byte[0];
        image.after = image.chunk("LIST", 4, new byte[] {1, 2, 3, 4});
        assertRefused("holds no sound");
    }

    @Test
    void aByteRateThatDoesNotFitPutsTheSampleRateInDoubt() throws IOException {
        byte[] bytes = image.bytes();
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putInt(28, 96000);
        Path file = Files.write(folder.resolve("rate.wav"), bytes);
        assertThat(Reading.of(file).notices()).singleElement().asString().contains("44100 Hz");
    }

    @Test
    void framesThatDoNotFitTheirChannelsAreRefused() {
        image.channels = 3;
        image.bits = 24;
        image.frameBytes = 4;
        assertRefused("contradicts itself");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 255})
    void channelsOutsideOneToEightAreRefused(int channels) {
        image.channels = channels;
        assertRefused(channels + " channels");
    }

    @Test
    void aFrameOfNoBytesIsRefused() {
        image.frameBytes = 0;
        assertRefused("frames of 0 bytes");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1234, 7999, 192001, -1})
    void ratesOutsideTheUsualAreRefusedWithTheRate(int rateHz) {
        image.rateHz = rateHz;
        assertRefused("samples a second");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x0002, 0x0011, 0x0031, 0x0055, 0x1234})
    void compressedSoundInsideIsRefusedWithARemedy(int tag) {
        image.tag = tag;
        assertRefused("save it as 16 or 24 bit PCM WAV");
    }

    @Test
    void floatsOfAnImpossibleSizeAreRefused() {
        image.tag = 3;
        image.samples(16, 2);
        assertRefused("contradicts itself");
    }

    @ParameterizedTest
    @ValueSource(floats = {Float.NaN, Float.POSITIVE_INFINITY, Float.NEGATIVE_INFINITY})
    void aSampleThatIsNoNumberIsRefusedWithItsTime(float broken) {
        image.tag = 3;
        image.rateHz = 10000;
        ByteBuffer sound = ByteBuffer.allocate(4 * 5000).order(ByteOrder.LITTLE_ENDIAN);
        image.samples(32, 4).sound(sound.putFloat(4 * 2500, broken).array());
        assertRefused("sample at 0.2500 s of channel 1");
    }

    @Test
    void aFileThatEndsAnywhereInItsHeaderIsRefused() throws IOException {
        byte[] whole = image.bytes();
        for (int length = 12; length < 44; length++) {
            Path file = Files.write(folder.resolve(length + ".wav"), Arrays.copyOf(whole, length));
            assertThatThrownBy(() -> Reading.of(file)).isInstanceOf(UnreadableRecordingException.class);
        }
    }

    private void assertRefused(String reason) {
        Path file = image.writeTo(folder);
        assertThatThrownBy(() -> Reading.of(file))
                .isInstanceOf(UnreadableRecordingException.class)
                .hasMessageContaining(reason)
                .hasMessageNotContaining("\n");
    }
}
