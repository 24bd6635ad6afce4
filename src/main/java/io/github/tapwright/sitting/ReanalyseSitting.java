package io.github.tapwright.sitting;

import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Computes a sitting's results anew from its originals and keeps them beside the old ones. */
public final class ReanalyseSitting {

    private final SittingStore sittings;
    private final TrackReader reader;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param source what opens sound files
     * @param clock what tells the time
     */
    public ReanalyseSitting(SittingStore sittings, RecordingSource source, Clock clock) {
        this.sittings = sittings;
        this.reader = new TrackReader(source);
        this.clock = clock;
    }

    /**
     * Analyses a sitting's originals with today's method.
     *
     * @param id which sitting
     * @param settings what to look for; empty means as in the latest analysis
     * @param progress told about each file and step
     * @return the new analysis; or the latest, and nothing is added, if every number is the same
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such sitting
     */
    public Analysis reanalyse(SittingId id, Optional<TapSettings> settings, Progress progress) {
        Sitting sitting = new ShowSitting(sittings).show(id);
        Analysis latest = sitting.latest();
        TapResult result = analyse(sitting, settings.orElse(latest.result().settings()), progress);
        return result.equals(latest.result())
                ? latest
                : sittings.addAnalysis(id, new NewAnalysis(clock.instant(), result));
    }

    private TapResult analyse(Sitting sitting, TapSettings settings, Progress progress) {
        int total = sitting.recordings().size() + 1;
        List<TapTrack> tracks = new ArrayList<>();
        for (KeptRecording recording : sitting.recordings()) {
            progress.at("reading " + recording.fileName(), tracks.size(), total);
            tracks.add(reader.read(sittings.locate(recording.original()), recording.fileName(), settings)
                    .track());
        }
        progress.at("finding resonances", total - 1, total);
        return TapAnalysis.analyse(tracks, settings, sitting.conditions().hole());
    }
}
