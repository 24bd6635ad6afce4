package io.github.tapwright.sitting;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;

/**
 * Keeps a calibration: a recorded calibrator tone in, what it says and all of it kept.
 *
 * <p>The file is copied first and the copy is checked, so that the numbers belong to the very bytes that are kept.
 */
public final class AddCalibration {

    private final CalibrationStore calibrations;
    private final CheckCalibration check;
    private final Clock clock;
    private final PossibleDates dates;

    /**
     * Joins the use case with what it needs.
     *
     * @param calibrations where calibrations are kept
     * @param source what opens sound files
     * @param clock what tells the time
     */
    public AddCalibration(CalibrationStore calibrations, RecordingSource source, Clock clock) {
        this.calibrations = calibrations;
        this.check = new CheckCalibration(source);
        this.clock = clock;
        this.dates = new PossibleDates(clock);
    }

    private Instant lastAdded() {
        return calibrations.all().stream()
                .map(KeptCalibration::addedAt)
                .max(Comparator.naturalOrder())
                .orElse(Instant.MIN);
    }

    /**
     * Keeps a calibration. Either all of it is kept when this returns, or an exception says why nothing is.
     *
     * @param request what to keep
     * @param progress told about each step
     * @return the calibration as it is kept
     * @throws io.github.tapwright.recording.UnreadableRecordingException if the file cannot be read, or holds no
     *     tone that can calibrate
     * @throws io.github.tapwright.instrument.RefusedEntryException if the day cannot be
     */
    public KeptCalibration add(CalibrationRequest request, Progress progress) {
        Instant now = clock.instant();
        request.takenAt().ifPresent(taken -> dates.refuseImpossible("a calibration", taken, lastAdded()));
        Path file = request.file();
        progress.at("checking " + file.getFileName(), 0, 1);
        StagedOriginal copy = calibrations.stage(file);
        try {
            CheckCalibration.CheckedTone tone =
                    check.check(new SoundFile(copy.file(), copy.fileName()), request.tone());
            Moment taken = request.takenAt().orElse(Moment.at(now));
            CalibrationId id = calibrations.add(new NewCalibration(taken, now, request.input(), copy, tone));
            return calibrations
                    .find(id)
                    .orElseThrow(() -> new IllegalStateException("calibration " + id + " was kept and is gone"));
        } finally {
            calibrations.discard(copy);
            progress.end();
        }
    }
}
