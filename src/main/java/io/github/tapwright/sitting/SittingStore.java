package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps sittings with their recordings, bit for bit, and their results. */
public interface SittingStore extends OriginalStore {

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
     * A sitting in the archive.
     *
     * @param id its number
     * @param before whether it was there before
     */
    record Once(SittingId id, boolean before) {}

    /**
     * Keeps a sitting of one recording as {@link #add} does, unless the archive holds it already: a sitting of this sound and
     * no other, under the same file name and taken at the same moment, or said to be before that was corrected. Of two programs that try it at once, one adds.
     *
     * @param sitting of one recording
     * @return the sitting that holds it
     * @throws RefusedEntryException if its instrument is not on the shelf
     */
    Once addOnce(NewSitting sitting);

    /**
     * Finds a sitting with all that is known about it.
     *
     * @param id its number
     * @return the sitting, or empty if there is none of this number
     */
    Optional<Sitting> find(SittingId id);

    /**
     * What questions about many sittings need of them, quickly.
     *
     * @param instrument whose sittings, or empty for all
     * @return oldest first
     */
    List<SittingOutline> outlines(Optional<ShopNumber> instrument);

    /**
     * The outlines of some sittings.
     *
     * @param ids their numbers
     * @return in the order asked, without those that do not exist
     */
    List<SittingOutline> outlines(List<SittingId> ids);

    /**
     * When the last sitting was added, by the clock of that time.
     *
     * @return {@link Instant#MIN} if there is none
     */
    Instant lastAdded();

    /**
     * The sittings that hold a recording.
     *
     * @param sha256 the recording's, as in {@link Original#sha256}
     * @return in the order they were added
     */
    List<SittingId> holding(String sha256);

    /**
     * Recordings that more than one sitting holds: one visit to the microphone, kept several times.
     *
     * @return the sittings of each such recording, in the order they were added
     */
    List<List<SittingId>> sharing();

    /**
     * The last sitting of taps on an instrument as it is: no mass stuck on, the hole not covered, and not set aside.
     *
     * @param instrument whose
     * @return its number; of several taken at one moment the last added; empty if there is none
     */
    Optional<SittingId> lastOfTaps(ShopNumber instrument);

    /**
     * Sittings on one line each.
     *
     * @param instrument whose sittings, or empty for all
     * @return oldest first
     */
    List<SittingSummary> list(Optional<ShopNumber> instrument);

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
     * Sets a sitting aside; all that was said before is kept.
     *
     * @param id an existing sitting
     * @param why the maker's reason
     * @throws RefusedEntryException if there is no such sitting
     */
    void setAside(SittingId id, OutOfUse why);

    /**
     * Takes a sitting back into use.
     *
     * @param id an existing sitting
     * @param at when the maker said so
     * @throws RefusedEntryException if there is no such sitting
     */
    void takeBack(SittingId id, Instant at);

    /**
     * Corrects what was written down about a sitting, also of which instrument it is; what it replaces is kept.
     *
     * @param id an existing sitting
     * @param known all that is known now
     * @throws RefusedEntryException if there is no such sitting, or its instrument is not on the shelf
     */
    void correct(SittingId id, WrittenDown known);

    /**
     * What was written down about a sitting before it was corrected.
     *
     * @param id an existing sitting
     * @return oldest first; empty if it was never corrected
     */
    List<WrittenDown> corrected(SittingId id);

    /**
     * Keeps what the maker said about a resonance, beside all that was said before.
     *
     * @param id an existing sitting
     * @param name the maker's word
     * @throws RefusedEntryException if there is no such sitting
     */
    void addName(SittingId id, GivenName name);
}
