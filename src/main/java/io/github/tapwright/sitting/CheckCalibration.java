package io.github.tapwright.sitting;

import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.CalibrationCheck;
import io.github.tapwright.level.CalibrationRefusal;
import io.github.tapwright.level.CalibrationResult;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Turns a recorded calibrator tone into a calibration; nothing is kept. */
public final class CheckCalibration {

    /** Far longer than anybody holds a calibrator, and short enough to be held in memory. */
    private static final int LONGEST_SECONDS = 120;

    private final NamedSource source;

    /**
     * Joins the use case with what it needs.
     *
     * @param source what opens sound files
     */
    public CheckCalibration(RecordingSource source) {
        this.source = new NamedSource(source);
    }

    /**
     * A tone that calibrates.
     *
     * @param calibration what it says
     * @param facts what reading its file showed; the channel used is the one with the most power
     */
    public record CheckedTone(Calibration calibration, SoundFacts facts) {}

    /**
     * Checks a recorded tone of two minutes at most.
     *
     * @param file the recording
     * @param tone what the calibrator promises
     * @return the calibration
     * @throws UnreadableRecordingException if the file cannot be read, or holds no tone that can calibrate: what
     *     is wrong with it, and what to do
     */
    public CheckedTone check(Path file, CalibratorTone tone) {
        return check(SoundFile.of(file), tone);
    }

    CheckedTone check(SoundFile file, CalibratorTone tone) {
        return source.read(file, recording -> {
            int most = (int) (LONGEST_SECONDS * recording.stream().sampleRate().hertz());
            Recording sound = Recording.readAll(recording.stream(), most);
            int channel = strongest(sound);
            SoundFacts facts = recording.facts(channel, sound.sampleRate().seconds(sound.length()));
            return new CheckedTone(calibration(sound, channel, tone), facts);
        });
    }

    private static Calibration calibration(Recording sound, int channel, CalibratorTone tone) {
        CalibrationResult result = CalibrationCheck.of(sound.channel(channel), sound.sampleRate(), tone);
        if (result instanceof Calibration calibration) {
            return calibration;
        }
        CalibrationRefusal refusal = (CalibrationRefusal) result;
        throw new UnreadableRecordingException("this recording cannot calibrate: " + refusal.found() + "; "
                + refusal.reason().remedy());
    }

    private static int strongest(Recording sound) {
        return IntStream.range(0, sound.channelCount())
                .boxed()
                .max(Comparator.comparingDouble(
                        c -> Arrays.stream(sound.channel(c)).map(x -> x * x).sum()))
                .orElseThrow();
    }
}
