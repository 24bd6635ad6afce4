package io.github.tapwright.validation;

import io.github.tapwright.level.broadcast.ChannelWeights;
import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import io.github.tapwright.level.broadcast.ProgrammeLoudnessMeter;
import io.github.tapwright.recording.SampleRate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Loudness of programmes: BS.1770 and the two EBU documents. */
final class ProgrammeSection implements Section {

    private static final double RATE_HZ = 48_000;
    private static final double SILENCE_DB = Double.NEGATIVE_INFINITY;
    private static final Tolerance TENTH = Tolerance.within(0.1, "the same source");

    @Override
    public String title() {
        return "Loudness of programmes, LUFS";
    }

    @Override
    public String about() {
        return "Made programmes of tones at 48 kHz through the whole meter: K weighting, gates, windows, range, peaks between samples."
                + " Cases made of real programmes cannot be computed and are left out.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        checks.add(new Check(
                "997 Hz at full scale in one channel",
                -3.01,
                "LUFS",
                "[BS1770], annex 1",
                Tolerance.within(0.01, "the last digit printed"),
                () -> measured(List.of(1.0), MadeSound.sine(RATE_HZ, 10, 997, 0))
                        .integratedLufs()
                        .orElseThrow()));
        integrated(checks, "1", -23, -23, 20);
        integrated(checks, "2", -33, -33, 20);
        integrated(checks, "3", -23, -36, 10, -23, 60, -36, 10);
        integrated(checks, "4", -23, -72, 10, -36, 10, -23, 60, -36, 10, -72, 10);
        integrated(checks, "5", -23, -26, 20, -20, 20.1, -26, 20);
        checks.add(new Check(
                "EBU case 6, five channels",
                -23,
                "LUFS",
                "[EBU3341], table 1",
                TENTH,
                () -> fiveChannels().integratedLufs().orElseThrow()));
        checks.add(new Check(
                "EBU case 9, short term",
                -23,
                "LUFS",
                "[EBU3341], table 1",
                TENTH,
                () -> stereo(repeated(5, -20, 1.34, -30, 1.66))
                        .shortTermMaxLufs()
                        .orElseThrow()));
        checks.add(new Check(
                "EBU case 12, momentary",
                -23,
                "LUFS",
                "[EBU3341], table 1",
                TENTH,
                () -> stereo(repeated(25, -20, 0.18, -30, 0.22))
                        .momentaryMaxLufs()
                        .orElseThrow()));
        for (int i : new int[] {0, 7, 19}) {
            checks.add(new Check(
                    "EBU case 10, tone " + (i + 1) + ", short term",
                    -23,
                    "LUFS",
                    "[EBU3341], table 1",
                    TENTH,
                    () -> stereo(tones(SILENCE_DB, 0.15 * i, -23, 3, SILENCE_DB, 1))
                            .shortTermMaxLufs()
                            .orElseThrow()));
        }
        range(checks, 1, 10, -20, 20, -30, 20);
        range(checks, 2, 5, -20, 20, -15, 20);
        range(checks, 3, 20, -40, 20, -20, 20);
        range(checks, 4, 15, -50, 20, -35, 20, -20, 20, -35, 20, -50, 20);
        peaks(checks);
        return checks;
    }

    private static void integrated(List<Check> checks, String number, double expected, double... levelsAndSeconds) {
        checks.add(new Check(
                "EBU case " + number + ", integrated",
                expected,
                "LUFS",
                "[EBU3341], table 1",
                TENTH,
                () -> stereo(tones(levelsAndSeconds)).integratedLufs().orElseThrow()));
    }

    private static void range(List<Check> checks, int number, double expected, double... levelsAndSeconds) {
        checks.add(new Check(
                "loudness range, case " + number,
                expected,
                "LU",
                "[EBU3342]",
                Tolerance.within(1, "the same source"),
                () -> stereo(tones(levelsAndSeconds)).loudnessRangeLu().orElseThrow()));
    }

    /** Cases 15 to 19: samples a period, amplitude, phase in degrees, true peak. */
    private static void peaks(List<Check> checks) {
        double[][] cases = {{4, 0.5, 0, -6}, {4, 0.5, 45, -6}, {6, 0.5, 60, -6}, {8, 0.5, 67.5, -6}, {4, 1.41, 45, 3}};
        for (int i = 0; i < cases.length; i++) {
            double[] c = cases[i];
            checks.add(new Check(
                    "EBU case " + (15 + i) + ", true peak",
                    c[3],
                    "dB",
                    "[EBU3341], table 1",
                    new Tolerance(0.4, 0.2, "the same source"),
                    () -> measured(List.of(1.0), swelling(c)).truePeakDb().orElseThrow()));
        }
    }

    private static double[] swelling(double[] c) {
        return MadeSound.of(
                RATE_HZ,
                0.5,
                t -> c[1]
                        * Math.min(1, Math.min(t, 0.5 - t) / 0.1)
                        * Math.sin(2 * Math.PI * t * RATE_HZ / c[0] + Math.toRadians(c[2])));
    }

    private static double[] tones(double... levelsAndSeconds) {
        double[][] parts = new double[levelsAndSeconds.length / 2][];
        Arrays.setAll(parts, k -> MadeSound.sine(RATE_HZ, levelsAndSeconds[2 * k + 1], 1000, levelsAndSeconds[2 * k]));
        return MadeSound.joined(parts);
    }

    private static double[] repeated(int times, double... levelsAndSeconds) {
        double[][] parts = new double[times][];
        Arrays.fill(parts, tones(levelsAndSeconds));
        return MadeSound.joined(parts);
    }

    private static ProgrammeLoudness fiveChannels() {
        return measured(
                ChannelWeights.ofUsualLayout(5).orElseThrow().weights(),
                tones(-28, 20),
                tones(-28, 20),
                tones(-24, 20),
                tones(-30, 20),
                tones(-30, 20));
    }

    private static ProgrammeLoudness stereo(double[] channel) {
        return measured(List.of(1.0, 1.0), channel, channel);
    }

    private static ProgrammeLoudness measured(List<Double> weights, double[]... channels) {
        ProgrammeLoudnessMeter meter = new ProgrammeLoudnessMeter(new ChannelWeights(weights), new SampleRate(RATE_HZ));
        int block = 10_000;
        for (int start = 0; start < channels[0].length; start += block) {
            int first = start;
            int count = Math.min(block, channels[0].length - start);
            meter.take(
                    Arrays.stream(channels)
                            .map(c -> Arrays.copyOfRange(c, first, first + count))
                            .toArray(double[][]::new),
                    count);
        }
        return meter.finish();
    }
}
