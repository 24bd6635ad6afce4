package io.github.tapwright.level.broadcast;

import io.github.tapwright.level.Sound;
import io.github.tapwright.recording.SampleRate;
import java.util.Arrays;
import java.util.List;

/** Programmes of steady tones, measured. */
final class Programme {

    static final double SILENCE_DB = Double.NEGATIVE_INFINITY;

    private Programme() {}

    /** Pieces of a 1 kHz tone given as peak level re full scale and seconds, the same in both channels. */
    static double[] tones(double rateHz, double... levelsAndSeconds) {
        double[][] parts = new double[levelsAndSeconds.length / 2][];
        Arrays.setAll(parts, k -> Sound.sine(rateHz, levelsAndSeconds[2 * k + 1], 1000, levelsAndSeconds[2 * k]));
        return Sound.joined(parts);
    }

    static ProgrammeLoudness stereo(double rateHz, double[] channel) {
        return measured(rateHz, List.of(1.0, 1.0), channel, channel);
    }

    static ProgrammeLoudness measured(double rateHz, List<Double> weights, double[]... channels) {
        ProgrammeLoudnessMeter meter = new ProgrammeLoudnessMeter(new ChannelWeights(weights), new SampleRate(rateHz));
        int block = 10_000;
        for (int start = 0; start < channels[0].length; start += block) {
            int first = start;
            int count = Math.min(block, channels[0].length - start);
            double[][] piece = Arrays.stream(channels)
                    .map(c -> Arrays.copyOfRange(c, first, first + count))
                    .toArray(double[][]::new);
            meter.take(piece, count);
        }
        return meter.finish();
    }

    static double[] repeated(double[] part, int times) {
        double[][] parts = new double[times][];
        Arrays.fill(parts, part);
        return Sound.joined(parts);
    }
}
