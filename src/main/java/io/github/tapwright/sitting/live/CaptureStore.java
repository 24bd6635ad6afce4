package io.github.tapwright.sitting.live;

import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.SittingId;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Where running recordings go to disk, and where those wait that no sitting was made of. */
public interface CaptureStore {

    /**
     * Begins a recording.
     *
     * @param notes what is known about it
     * @return the recording; the caller closes it
     */
    Capture begin(CaptureNotes notes);

    /**
     * Recordings that wait: ended but not kept, or left behind by a program that is gone. One that is being written,
     * by this program or another, is not among them.
     *
     * @return oldest first
     */
    List<LeftCapture> leftBehind();

    /**
     * Makes the file of a recording left behind a complete WAV file: its header says what is there, and a frame cut
     * in two at the end is taken off. Nothing else is changed.
     *
     * @param id which recording
     * @return the recording as it is now
     * @throws io.github.tapwright.instrument.RefusedEntryException if no such recording waits
     */
    LeftCapture mend(CaptureId id);

    /**
     * Copies a recording to a file of the maker's, mended; it goes on waiting.
     *
     * @param id which recording
     * @param target a file that does not exist yet
     * @throws io.github.tapwright.instrument.RefusedEntryException if no such recording waits, or the file exists
     */
    void export(CaptureId id, Path target);

    /**
     * Stops offering a recording; its file stays in the archive's folder {@code captures/set-aside}.
     *
     * @param id which recording
     * @return where the file lies now
     * @throws io.github.tapwright.instrument.RefusedEntryException if no such recording waits
     */
    Path setAside(CaptureId id);

    /**
     * The sitting that was made of a recording, where a program was stopped before it could let go of the recording.
     * The sound alone does not tell, since the maker may put the same sound into another sitting: the sitting must hold
     * this sound and no other, under the name the archive gave it, and be taken when the recording began.
     *
     * @param id which recording, mended
     * @return the first such sitting, or empty if none was made
     * @throws io.github.tapwright.instrument.RefusedEntryException if no such recording waits
     */
    Optional<SittingId> keptAs(CaptureId id);

    /**
     * Lets go of a recording that is kept as an original now; nothing if another program has done so already.
     *
     * @param id which recording
     * @param kept the original; must hold the very bytes of the recording, undamaged
     * @throws io.github.tapwright.instrument.RefusedEntryException if no such recording waits
     * @throws IllegalArgumentException if the original holds something else; nothing is removed then
     */
    void release(CaptureId id, Original kept);
}
