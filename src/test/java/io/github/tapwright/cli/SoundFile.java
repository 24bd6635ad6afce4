package io.github.tapwright.cli;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.level.Sound;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.io.IOException;
import java.nio.file.Path;

/** Real WAV files of computed tones, 32 bit float, 48 kHz. */
final class SoundFile {

    private static final double RATE_HZ = 48_000;

    private SoundFile() {}

    /** Four seconds of a sine, peak level in dB re full scale. */
    static Path sine(Path file, double frequencyHz, double peakDb) throws IOException {
        return write(file, sine(frequencyHz, peakDb));
    }

    static double[] sine(double frequencyHz, double peakDb) {
        return Sound.sine(RATE_HZ, 4, frequencyHz, peakDb);
    }

    static Path write(Path file, double[]... channels) throws IOException {
        WavWriter.write(file, Recording.of(new SampleRate(RATE_HZ), channels), WavSamples.FLOAT_32);
        return file;
    }
}
