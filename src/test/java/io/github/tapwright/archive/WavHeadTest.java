package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.sitting.live.LiveFormat;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WavHeadTest {

    @TempDir
    Path folder;

    @Test
    void beyondFourGigabytesTheHeadIsThatOfRf64() throws IOException {
        LiveFormat format = new LiveFormat(96_000, 2, 24);
        long frames = 3L * 3600 * 96_000; // three hours, 6.2 GB; the file is a sparse one
        Path file = folder.resolve("long.wav");
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.SPARSE)) {
            channel.write(WavHead.of(format, frames), 0);
            channel.write(ByteBuffer.allocate(1), WavHead.BYTES + 6 * frames - 1);
        }

        try (OpenedAudio audio = AudioFile.open(file)) {
            assertThat(audio.format().container()).isEqualTo("WAV (RF64)");
            assertThat(audio.sampleRate().hertz()).isEqualTo(96_000);
            assertThat(audio.channelCount()).isEqualTo(2);
            assertThat(audio.notices()).isEmpty();
        }
        assertThat(CaptureFile.framesIn(file, format)).isEqualTo(frames);
    }
}
