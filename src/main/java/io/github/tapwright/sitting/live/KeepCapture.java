package io.github.tapwright.sitting.live;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.sitting.SittingStore;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What becomes of recordings that wait: a sitting, a file of the maker's, or set aside; never silently nothing. */
public final class KeepCapture {

    private final CaptureStore captures;
    private final ShowSitting showing;
    private final AddSitting adding;

    /**
     * Joins the use case with what it needs.
     *
     * @param captures where recordings wait
     * @param sittings where sittings are kept
     * @param adding what makes sittings
     */
    public KeepCapture(CaptureStore captures, SittingStore sittings, AddSitting adding) {
        this.captures = captures;
        this.showing = new ShowSitting(sittings);
        this.adding = adding;
    }

    /**
     * Recordings that wait, after a stop or a crash; one that still runs is not among them.
     *
     * @return oldest first
     */
    public List<LeftCapture> waiting() {
        return captures.leftBehind();
    }

    /**
     * Makes a sitting of a recording: its file becomes an original bit for bit, and is analysed as any other. Where
     * that was done already and only the letting go of the recording is left, that alone is done. Two programs that keep
     * it at once make one sitting.
     *
     * @param id which recording
     * @param change what the maker has to add to or correct in its notes
     * @param progress told about each step
     * @return the sitting that holds the recording, and whether it was made just now
     * @throws RefusedEntryException if no such recording waits, it holds no sound, or its instrument is unknown
     */
    public KeptCapture keep(CaptureId id, UnaryOperator<CaptureNotes> change, Progress progress) {
        LeftCapture left = captures.mend(id);
        if (left.frames() == 0) {
            throw new RefusedEntryException(
                    "recording " + id + " holds no sound; set it aside, and record again with the input checked");
        }
        Optional<SittingId> before = captures.keptAs(id);
        KeptCapture kept = before.isPresent()
                ? new KeptCapture(showing.show(before.get()), true)
                : add(left, change.apply(left.notes()), progress);
        captures.release(id, kept.sitting().recordings().get(0).original());
        return kept;
    }

    private KeptCapture add(LeftCapture left, CaptureNotes notes, Progress progress) {
        SittingRequest request = new SittingRequest(
                        notes.instrument(),
                        Optional.of(Moment.at(notes.startedAt())),
                        notes.conditions(),
                        List.of(left.file()),
                        notes.procedure())
                .withRemarks(remarks(left));
        AddSitting.Once kept = adding.addOnce(request, progress);
        return new KeptCapture(kept.sitting(), kept.before());
    }

    private static List<String> remarks(LeftCapture left) {
        List<String> remarks = new ArrayList<>();
        if (!left.finished()) {
            remarks.add("the recording was broken off; all that had reached the disk was recovered");
        }
        left.losses().forEach(l -> remarks.add(l.text(left.notes().format())));
        return remarks;
    }

    /**
     * Copies a recording to a file; it goes on waiting.
     *
     * @param id which recording
     * @param target a file that does not exist yet
     */
    public void export(CaptureId id, Path target) {
        captures.export(id, target);
    }

    /**
     * Stops offering a recording; its file stays.
     *
     * @param id which recording
     * @return where it lies now
     */
    public Path setAside(CaptureId id) {
        return captures.setAside(id);
    }
}
