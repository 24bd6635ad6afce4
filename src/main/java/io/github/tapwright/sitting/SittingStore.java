package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Keeps sittings with their recordings, bit for bit, and their results. */
public interface SittingStore {

    /**
     * Makes a safe copy of a file beside the archive's originals; nothing refers to it yet.
     *
     * @param file the maker's file, which is only read
     * @return the copy, on disk when this returns
     * @throws io.github.tapwright.recording.UnreadableRecordingException if the file is not there or may not be read
     */
    StagedOriginal stage(Path file);

    /**
     * Takes back a safe copy that turned out not to be wanted; the maker's file is not touched.
     *
     * @param staged a copy that no sitting was added with
     */
    void discard(StagedOriginal staged);

    /**
     * Keeps a sitting: first its originals, then everything else in one step. After a failure in between there
     * is no half sitting, and an original that was already placed stays.
     *
     * @param sitting the sitting
     * @return the number it got
     * @throws RefusedEntryException if its instrument is not on the shelf
     */
    SittingId add(NewSitting sitting);

    /**
     * Finds a sitting with all that is known about it.
     *
     * @param id its number
     * @return the sitting, or empty if there is none of this number
     */
    Optional<Sitting> find(SittingId id);

    /**
     * Sittings on one line each.
     *
     * @param instrument whose sittings, or empty for all
     * @return oldest first
     */
    List<SittingSummary> list(Optional<ShopNumber> instrument);

    /**
     * Where a kept original lies, after making sure that it is there and undamaged.
     *
     * @param original which original
     * @return a file that may be read, and nothing else
     */
    Path locate(Original original);

    /**
     * Keeps another analysis beside those a sitting has.
     *
     * @param id an existing sitting
     * @param analysis the analysis
     * @return the analysis with its number
     * @throws RefusedEntryException if there is no such sitting
     */
    Analysis addAnalysis(SittingId id, NewAnalysis analysis);

    /**
     * Corrects what was written down about a sitting; what it replaces is kept.
     *
     * @param id an existing sitting
     * @param conditions all that is known now
     * @throws RefusedEntryException if there is no such sitting
     */
    void correct(SittingId id, Conditions conditions);

    /**
     * What was written down about a sitting before it was corrected.
     *
     * @param id an existing sitting
     * @return oldest first; empty if it was never corrected
     */
    List<Conditions> corrected(SittingId id);

    /**
     * Keeps what the maker said about a resonance, beside all that was said before.
     *
     * @param id an existing sitting
     * @param name the maker's word
     * @throws RefusedEntryException if there is no such sitting
     */
    void addName(SittingId id, GivenName name);
}
