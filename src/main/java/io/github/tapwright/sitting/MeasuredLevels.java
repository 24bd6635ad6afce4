package io.github.tapwright.sitting;

import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.level.LevelReport;
import io.github.tapwright.level.broadcast.ProgrammeLoudness;
import io.github.tapwright.level.loudness.NoLoudness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The levels of one recording, and what its reader must know.
 *
 * @param file the recording as the maker named it
 * @param facts what reading it showed; the channel used is the one with the highest LAeq
 * @param report its levels
 */
public record MeasuredLevels(String file, SoundFacts facts, LevelReport report) {

    /**
     * The channel that stands for the recording where one figure must: the one with the highest LAeq.
     *
     * @return its levels
     */
    public ChannelLevels mainChannel() {
        return report.channels().get(facts.channelUsed());
    }

    /**
     * Whether any channel holds sound.
     *
     * @return false for silence, which has no levels
     */
    public boolean audible() {
        return mainChannel().soundLevels().isPresent();
    }

    private static final double LOUDNESS_RANGE_SECONDS = 60;

    /**
     * Everything the reader must know before trusting the numbers, and why a number is missing.
     *
     * @return one line each
     */
    public List<String> warnings() {
        List<String> warnings = new ArrayList<>(facts.notices());
        warnings.addAll(report.warnings());
        if (!audible()) {
            warnings.add("there is no sound at all in the recording; check input and gain, and record again");
            return warnings;
        }
        IntStream.range(0, report.channels().size())
                .filter(c -> report.channels().get(c).soundLevels().isEmpty())
                .forEach(c -> warnings.add("channel " + (c + 1) + " holds no sound"));
        if (report.settings().reference() instanceof Calibration
                && report.channels().size() > 1) {
            warnings.add("the calibration is of one microphone and input, and was applied to all "
                    + report.channels().size() + " channels; trust that of the calibrated microphone alone");
        }
        report.programme().ifPresent(programme -> addMissing(programme, warnings));
        if (facts.durationSeconds() < LOUDNESS_RANGE_SECONDS
                && report.programme()
                        .filter(p -> p.loudnessRangeLu().isPresent())
                        .isPresent()) {
            warnings.add(
                    "the loudness range needs about a minute of sound (common practice, no source); this is shorter");
        }
        if (mainChannel().loudness() instanceof NoLoudness none) {
            warnings.add("no loudness in sone and phon: " + none.reason());
        }
        return warnings;
    }

    private static void addMissing(ProgrammeLoudness programme, List<String> warnings) {
        if (programme.integratedLufs().isEmpty()) {
            warnings.add("no integrated loudness: the recording is shorter than 0.4 s or never above −70 LUFS");
        }
        if (programme.shortTermMaxLufs().isEmpty()) {
            warnings.add("no short-term loudness: the recording is shorter than 3 s");
        }
    }

    /** The channel with the highest LAeq; the first of silent ones. */
    static int loudest(LevelReport report) {
        return IntStream.range(0, report.channels().size())
                .boxed()
                .max(Comparator.comparingDouble(
                                (Integer c) -> laeqDb(report.channels().get(c)))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
    }

    private static double laeqDb(ChannelLevels channel) {
        return channel.soundLevels().map(s -> s.laeq().levelDb()).orElse(Double.NEGATIVE_INFINITY);
    }
}
