package io.github.tapwright.archive;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.sitting.RecordingSource;
import io.github.tapwright.sitting.SourceRecording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/** Small real WAV files: written with invented taps, read back as the program reads them. */
final class TestWav {

    private static final int HEADER_BYTES = 44;
    private static final int RATE_HZ = 8000;

    private TestWav() {}

    /** Writes two taps, decaying sines in a little noise; equal seeds give equal bytes. */
    static Path write(Path file, long seed) {
        return write(file, seed, RATE_HZ, 0.5);
    }

    /** Writes a moment of an empty room, in which there is nothing to find and so little to compute. */
    static Path writeRoom(Path file, long seed) {
        return write(file, seed, RATE_HZ / 2, 0);
    }

    private static Path write(Path file, long seed, int length, double strength) {
        Random random = new Random(seed);
        double frequencyHz = 95 + 10 * random.nextDouble();
        ByteBuffer bytes = ByteBuffer.allocate(HEADER_BYTES + 2 * length).order(ByteOrder.LITTLE_ENDIAN);
        header(bytes, length);
        for (int n = 0; n < length; n++) {
            double seconds = (n % (length / 2)) / (double) RATE_HZ;
            double tap = strength * Math.exp(-15 * seconds) * Math.sin(2 * Math.PI * frequencyHz * seconds);
            bytes.putShort((short) Math.round(32767 * (tap + 0.0005 * random.nextGaussian())));
        }
        try {
            return Files.write(file, bytes.array());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void header(ByteBuffer bytes, int length) {
        bytes.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(HEADER_BYTES - 8 + 2 * length);
        bytes.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        bytes.putShort((short) 1).putShort((short) 1);
        bytes.putInt(RATE_HZ).putInt(2 * RATE_HZ).putShort((short) 2).putShort((short) 16);
        bytes.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(2 * length);
    }

    /** Opens sound files as the program does. */
    static RecordingSource source() {
        return file -> {
            OpenedAudio audio = AudioFile.open(file);
            return new SourceRecording(audio, audio.format().container(), audio::notices);
        };
    }
}
