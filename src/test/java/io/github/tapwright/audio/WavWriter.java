package io.github.tapwright.audio;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Writes recordings as WAV files, never over an existing one and never clipping. */
public final class WavWriter {

    private static final int HEADER_BYTES = 58;
    private static final int BUFFER_FRAMES = 4096;

    private WavWriter() {}

    /**
     * Writes a recording to a new file.
     *
     * <p>Integers are the nearest ones, sample · 2^(bits − 1) rounded, without dither; floats are the
     * samples in single precision.
     *
     * @param file must not exist yet
     * @param recording whole number of samples a second, together less than 4 GB
     * @param samples how each sample is stored
     * @throws IllegalArgumentException if a sample is beyond what {@code samples} can hold, the sample rate is not
     *     a whole number, or the file would be too long; nothing is written then
     * @throws IOException if the file exists or the disk refuses
     */
    public static void write(Path file, Recording recording, WavSamples samples) throws IOException {
        double[][] channels = new double[recording.channelCount()][];
        for (int c = 0; c < channels.length; c++) {
            channels[c] = recording.channel(c);
            requireWithin(channels[c], recording.sampleRate(), samples);
        }
        long soundBytes = (long) channels.length * recording.length() * samples.bytes();
        ByteBuffer header = header(recording, samples, soundBytes);
        try (SeekableByteChannel out =
                Files.newByteChannel(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            writeFully(out, header);
            writeSound(out, channels, samples);
        }
    }

    private static void requireWithin(double[] channel, SampleRate rate, WavSamples samples) {
        for (int i = 0; i < channel.length; i++) {
            if (!samples.canHold(channel[i])) {
                throw new IllegalArgumentException("the sample at " + Wording.seconds(rate.seconds(i)) + " is "
                        + channel[i] + " of full scale, which " + samples.title()
                        + " cannot hold; make the recording softer or write 32 bit float");
            }
        }
    }

    private static ByteBuffer header(Recording recording, WavSamples samples, long soundBytes) {
        double rate = recording.sampleRate().hertz();
        if (rate != Math.rint(rate) || rate > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("a WAV file needs a whole number of samples a second, not " + rate);
        }
        long fileBytes = HEADER_BYTES + soundBytes + soundBytes % 2;
        if (fileBytes > 0xFFFF_FFFFL) {
            throw new IllegalArgumentException("the recording is too long for a WAV file of 4 GB; cut it into pieces");
        }
        int frameBytes = recording.channelCount() * samples.bytes();
        return ByteBuffer.allocate(HEADER_BYTES)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(letters("RIFF"))
                .putInt((int) (fileBytes - 8))
                .put(letters("WAVEfmt "))
                .putInt(18)
                .putShort((short) samples.formatTag())
                .putShort((short) recording.channelCount())
                .putInt((int) rate)
                .putInt((int) (rate * frameBytes))
                .putShort((short) frameBytes)
                .putShort((short) (8 * samples.bytes()))
                .putShort((short) 0)
                .put(letters("fact"))
                .putInt(4)
                .putInt(recording.length())
                .put(letters("data"))
                .putInt((int) soundBytes)
                .flip();
    }

    private static byte[] letters(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static void writeSound(SeekableByteChannel out, double[][] channels, WavSamples samples)
            throws IOException {
        int frameBytes = channels.length * samples.bytes();
        ByteBuffer buffer = ByteBuffer.allocate(BUFFER_FRAMES * frameBytes + 1).order(ByteOrder.LITTLE_ENDIAN);
        int length = channels[0].length;
        for (int from = 0; from < length; from += BUFFER_FRAMES) {
            buffer.clear();
            int to = Math.min(length, from + BUFFER_FRAMES);
            for (int i = from; i < to; i++) {
                for (double[] channel : channels) {
                    samples.put(buffer, channel[i]);
                }
            }
            if (to == length && buffer.position() % 2 == 1) {
                buffer.put((byte) 0);
            }
            writeFully(out, buffer.flip());
        }
    }

    private static void writeFully(SeekableByteChannel out, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            out.write(bytes);
        }
    }
}
