package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.tap.TapSettings;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** Computes a sitting's results anew from its originals and keeps them beside the old ones. */
public final class ReanalyseSitting {

    private final SittingStore sittings;
    private final FindingsReader reader;
    private final ShowCalibration calibrations;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param calibrations where calibrations are kept
     * @param source what opens sound files
     * @param clock what tells the time
     */
    public ReanalyseSitting(SittingStore sittings, CalibrationStore calibrations, RecordingSource source, Clock clock) {
        this.sittings = sittings;
        this.reader = new FindingsReader(source, calibrations);
        this.calibrations = new ShowCalibration(calibrations);
        this.clock = clock;
    }

    /**
     * Analyses a sitting's originals with today's method. Levels that rested on a calibration withdrawn since are measured re full scale.
     *
     * @param id which sitting
     * @param settings what to look for in taps; empty means as in the latest analysis
     * @param progress told about each file and step
     * @return the new analysis; or the latest, and nothing is added, if every number is the same
     * @throws RefusedEntryException if there is no such sitting, or settings for taps are given for another procedure
     */
    public Analysis reanalyse(SittingId id, Optional<TapSettings> settings, Progress progress) {
        Sitting sitting = new ShowSitting(sittings).show(id);
        Procedure before = withoutWithdrawn(sitting.latest().findings());
        if (settings.isPresent() && !(before instanceof Procedure.BodyTaps)) {
            throw new RefusedEntryException("sitting " + id + " is for " + before.key()
                    + "; a band of frequencies is for taps only, leave it out for this sitting");
        }
        return keep(sitting, settings.<Procedure>map(Procedure.BodyTaps::new).orElse(before), progress);
    }

    /**
     * Measures the levels of a sitting of plucks anew, by another calibration.
     *
     * @param id which sitting
     * @param calibration what the levels shall rest on
     * @param progress told about each file and step
     * @return the new analysis; or the latest, and nothing is added, if every number is the same
     * @throws RefusedEntryException if there is no such sitting or calibration, the calibration is withdrawn, or the sitting is
     *     not of plucks
     */
    public Analysis reanalyse(SittingId id, CalibrationId calibration, Progress progress) {
        Sitting sitting = new ShowSitting(sittings).show(id);
        Tuning tuning = requirePlucks(sitting).tuning();
        CalibrationId inUse = calibrations.use(calibration).id();
        return keep(sitting, new Procedure.OpenPlucks(tuning, Optional.of(inUse)), progress);
    }

    /**
     * Measures the levels of a sitting of plucks anew, re full scale.
     *
     * @param id which sitting
     * @param progress told about each file and step
     * @return the new analysis; or the latest, and nothing is added, if every number is the same
     * @throws RefusedEntryException if there is no such sitting, or it is not of plucks
     */
    public Analysis withoutCalibration(SittingId id, Progress progress) {
        Sitting sitting = new ShowSitting(sittings).show(id);
        return keep(sitting, new Procedure.OpenPlucks(requirePlucks(sitting).tuning(), Optional.empty()), progress);
    }

    private static Procedure.OpenPlucks requirePlucks(Sitting sitting) {
        if (sitting.latest().findings().procedure() instanceof Procedure.OpenPlucks plucks) {
            return plucks;
        }
        throw new RefusedEntryException("sitting " + sitting.id() + " is for "
                + sitting.latest().findings().procedure().key()
                + "; a calibration is for sittings of plucks, leave it out for this sitting");
    }

    private static Procedure withoutWithdrawn(Findings findings) {
        return findings.plucks()
                .filter(run -> run.withdrawn().isPresent())
                .<Procedure>map(run -> new Procedure.OpenPlucks(run.tuning(), Optional.empty()))
                .orElseGet(findings::procedure);
    }

    private Analysis keep(Sitting sitting, Procedure procedure, Progress progress) {
        Analysis latest = sitting.latest();
        List<SoundFile> files = sitting.recordings().stream()
                .map(r -> new SoundFile(sittings.locate(r.original()), r.fileName()))
                .toList();
        Findings findings = reader.read(files, procedure, sitting.conditions().hole(), progress)
                .findings();
        return findings.equals(latest.findings())
                ? latest
                : sittings.addAnalysis(sitting.id(), new NewAnalysis(clock.instant(), findings));
    }
}
