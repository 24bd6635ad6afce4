package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.NewSitting.NewRecording;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Adds a sitting: recordings and conditions in, results and all of it kept.
 *
 * <p>Each file is copied first and the copy is analysed, so that the numbers belong to the very bytes that are
 * kept, even if something still writes to the maker's file.
 */
public final class AddSitting {

    private final InstrumentStore instruments;
    private final SittingStore sittings;
    private final FindingsReader reader;
    private final ShowCalibration calibrations;
    private final Clock clock;
    private final PossibleDates dates;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     * @param sittings where sittings are kept
     * @param calibrations where calibrations are kept
     * @param source what opens sound files
     * @param clock what tells the time
     */
    public AddSitting(
            InstrumentStore instruments,
            SittingStore sittings,
            CalibrationStore calibrations,
            RecordingSource source,
            Clock clock) {
        this.instruments = instruments;
        this.sittings = sittings;
        this.calibrations = new ShowCalibration(calibrations);
        this.reader = new FindingsReader(source, calibrations);
        this.clock = clock;
        this.dates = new PossibleDates(clock);
    }

    /**
     * Adds a sitting. Either all of it is kept when this returns, or an exception says why nothing is.
     *
     * @param request what to add
     * @param progress told about each file and step
     * @return the sitting as it is kept
     * @throws RefusedEntryException if the instrument is unknown, one recording was given twice, the
     *     calibration is withdrawn, or a day cannot be
     * @throws io.github.tapwright.recording.UnreadableRecordingException if a file holds no sound that can be read
     */
    public Sitting add(SittingRequest request, Progress progress) {
        request.takenAt().ifPresent(taken -> dates.refuseImpossible(taken, sittings.lastAdded()));
        calibrations.refuseWithdrawn(request.procedure());
        return keep(request, progress, sitting -> found(sittings.add(sitting)));
    }

    /**
     * The sitting that holds a recording.
     *
     * @param sitting as it is kept
     * @param before whether it was there before; nothing was added or changed then
     */
    public record Once(Sitting sitting, boolean before) {}

    /**
     * Adds a sitting of one recording as {@link #add} does, unless it is there already, such as by another program a moment
     * ago. A recording made before its calibration was withdrawn is kept all the same, and says so.
     *
     * @param request what to add, one file
     * @param progress told about each step
     * @return the sitting that holds the recording
     */
    public Once addOnce(SittingRequest request, Progress progress) {
        return keep(request, progress, sitting -> {
            SittingStore.Once kept = sittings.addOnce(sitting);
            return new Once(found(kept.id()), kept.before());
        });
    }

    private <T> T keep(SittingRequest request, Progress progress, Function<NewSitting, T> keeping) {
        if (instruments.find(request.instrument()).isEmpty()) {
            throw ShowInstrument.notOnTheShelf(instruments, request.instrument());
        }
        Instant now = clock.instant();
        dates.refuseLaterStrings(request.takenAt().map(Moment::instant).orElse(now), request.conditions());
        List<StagedOriginal> staged = new ArrayList<>();
        try {
            return keeping.apply(prepare(request, now, staged, progress));
        } finally {
            staged.forEach(sittings::discard);
            progress.end();
        }
    }

    private Sitting found(SittingId id) {
        return sittings.find(id)
                .orElseThrow(() -> new IllegalStateException("sitting " + id + " was kept and is gone"));
    }

    private NewSitting prepare(SittingRequest request, Instant now, List<StagedOriginal> staged, Progress progress) {
        List<SoundFile> files = copy(request.files(), staged, progress);
        FindingsReader.Read read =
                reader.read(files, request.procedure(), request.conditions().hole(), progress);
        progress.at("keeping the sitting", files.size(), files.size() + 1);
        List<NewRecording> recordings = new ArrayList<>();
        for (int f = 0; f < files.size(); f++) {
            SoundFacts facts = read.facts().get(f).withNotices(keptBefore(staged.get(f)));
            recordings.add(new NewRecording(staged.get(f), f == 0 ? facts.withNotices(request.remarks()) : facts));
        }
        return new NewSitting(
                request.instrument(),
                request.takenAt().orElse(Moment.at(now)),
                now,
                request.conditions(),
                recordings,
                new NewAnalysis(now, read.findings()));
    }

    private List<SoundFile> copy(List<Path> files, List<StagedOriginal> staged, Progress progress) {
        List<SoundFile> copies = new ArrayList<>();
        Map<String, Path> seen = new HashMap<>();
        for (Path file : files) {
            progress.at("copying " + file.getFileName(), copies.size(), files.size());
            StagedOriginal copy = sittings.stage(file);
            staged.add(copy);
            refuseTwice(file, seen.put(copy.original().sha256(), file) == null);
            copies.add(new SoundFile(copy.file(), copy.fileName()));
        }
        return copies;
    }

    /** Kept as a notice, not refused: one file may rightly be analysed for another purpose, or once more under its true date. */
    private List<String> keptBefore(StagedOriginal copy) {
        List<SittingId> before = sittings.holding(copy.original().sha256());
        if (before.isEmpty()) {
            return List.of();
        }
        String numbers = before.stream().map(SittingId::toString).collect(Collectors.joining(", "));
        return List.of("this very recording is already kept in " + (before.size() == 1 ? "sitting " : "sittings ")
                + numbers + "; it is one set-up, and no study, history or group counts it twice");
    }

    private static void refuseTwice(Path file, boolean first) {
        if (!first) {
            throw new RefusedEntryException(file.getFileName()
                    + " holds the same recording as another file of this sitting; give each recording once");
        }
    }
}
