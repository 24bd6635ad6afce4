package io.github.tapwright.archive;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.RecordingSource;
import io.github.tapwright.sitting.SourceRecording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/** Small real WAV files: written with invented taps, read back by the plainest reader that can. */
final class TestWav {

    private static final int HEADER_BYTES = 44;
    private static final int RATE_HZ = 8000;

    private TestWav() {}

    /** Writes decaying sines with a little noise; equal seeds give equal bytes. */
    static Path write(Path file, long seed) {
        Random random = new Random(seed);
        double frequencyHz = 95 + 10 * random.nextDouble();
        int length = RATE_HZ;
        ByteBuffer bytes = ByteBuffer.allocate(HEADER_BYTES + 2 * length).order(ByteOrder.LITTLE_ENDIAN);
        header(bytes, length);
        for (int n = 0; n < length; n++) {
            double seconds = (n % (length / 2)) / (double) RATE_HZ;
            double tap = 0.5 * Math.exp(-15 * seconds) * Math.sin(2 * Math.PI * frequencyHz * seconds);
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

    /** Opens what {@link #write} wrote. */
    static RecordingSource source() {
        return TestWav::open;
    }

    private static SourceRecording open(Path file) {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
            if (bytes.limit() < HEADER_BYTES || bytes.getInt(0) != 0x46464952) {
                throw new UnreadableRecordingException(file.getFileName() + " is no WAV file; give a WAV file");
            }
            double[] samples = new double[(bytes.limit() - HEADER_BYTES) / 2];
            for (int n = 0; n < samples.length; n++) {
                samples[n] = bytes.getShort(HEADER_BYTES + 2 * n) / 32768.0;
            }
            Recording recording = Recording.of(new SampleRate(bytes.getInt(24)), samples);
            return new SourceRecording(recording.stream(), "WAV, 16 bit", () -> List.of("written by a test"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
