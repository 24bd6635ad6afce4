package io.github.tapwright.sitting;

import io.github.tapwright.level.LevelSettings;
import io.github.tapwright.mode.HoleState;
import java.util.List;

/** Reads a sitting's recordings by the procedure they were made for: the one way from kept files to findings. */
final class FindingsReader {

    private final AnalyseTaps taps;
    private final MapFingerboard runs;
    private final MeasurePlucks plucks;
    private final ShowCalibration calibrations;

    FindingsReader(RecordingSource source, CalibrationStore calibrations) {
        this.taps = new AnalyseTaps(source, SideBySide.ALL_PROCESSORS);
        this.runs = new MapFingerboard(source, SideBySide.ALL_PROCESSORS);
        this.plucks = new MeasurePlucks(source);
        this.calibrations = new ShowCalibration(calibrations);
    }

    /** What reading each file showed, and what was found in all of them together. */
    record Read(List<SoundFacts> facts, Findings findings) {}

    Read read(List<SoundFile> files, Procedure procedure, HoleState hole, Progress progress) {
        if (procedure instanceof Procedure.NoteRun wanted) {
            MapFingerboard.Mapped mapped = runs.read(files, wanted.settings(), progress);
            return new Read(mapped.facts(), new Findings.OfNotes(mapped.board()));
        }
        if (procedure instanceof Procedure.OpenPlucks wanted) {
            return read(files, wanted, progress);
        }
        AnalyseTaps.Found found = taps.read(files, ((Procedure.BodyTaps) procedure).settings(), hole, progress);
        return new Read(found.facts(), new Findings.OfTaps(found.result()));
    }

    private Read read(List<SoundFile> files, Procedure.OpenPlucks wanted, Progress progress) {
        LevelSettings levels = wanted.calibration()
                .map(id -> LevelSettings.calibrated(calibrations.show(id).calibration()))
                .orElse(LevelSettings.RELATIVE);
        MeasurePlucks.Measured measured = plucks.read(files, wanted.tuning(), levels, progress);
        PluckRun run =
                new PluckRun(measured.plucks(), wanted.tuning(), wanted.calibration(), MeasurePlucks.METHOD_VERSION);
        return new Read(measured.facts(), new Findings.OfPlucks(run));
    }
}
