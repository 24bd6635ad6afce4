package io.github.tapwright.audio;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.CheckCalibration;
import io.github.tapwright.sitting.SourceRecording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;

/** Any bytes where a recorded calibrator tone should be. */
class CalibratorToneFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(UnreadableRecordingException.class));

    @TempDir
    static Path folder;

    @FuzzTest
    void calibratesOrIsRefused(byte[] bytes) {
        CheckCalibration check = new CheckCalibration(CalibratorToneFuzzTest::open);
        BOUNDS.hold(bytes.length, () -> {
            Path file = Files.write(folder.resolve("tone"), bytes);
            check.check(file, CalibratorTone.classOne(94));
        });
    }

    private static SourceRecording open(Path file) {
        OpenedAudio audio = AudioFile.open(file);
        return new SourceRecording(audio, audio.format().container(), audio::notices);
    }
}
