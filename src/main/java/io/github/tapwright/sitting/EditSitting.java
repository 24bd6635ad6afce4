package io.github.tapwright.sitting;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Corrects what was written down about a sitting; recordings and figures are not touched. */
public final class EditSitting {

    private final SittingStore sittings;
    private final ReanalyseSitting reanalyse;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param reanalyse what computes results anew
     */
    public EditSitting(SittingStore sittings, ReanalyseSitting reanalyse) {
        this.sittings = sittings;
        this.reanalyse = reanalyse;
    }

    /**
     * What an edit did.
     *
     * @param sitting the sitting as it is kept now
     * @param before what was written down until now
     * @param added the analysis it brought; empty if none was needed, or every figure and name is the same
     * @param failure why a new analysis failed: the correction is kept, names and figures are still those from before;
     *     empty if nothing failed
     */
    public record Edited(
            Sitting sitting, Conditions before, Optional<Analysis> added, Optional<RuntimeException> failure) {

        /**
         * Whether what decides the suggested names was corrected.
         *
         * @return true if the soundhole is written down otherwise than before
         */
        public boolean holeChanged() {
            return sitting.conditions().hole() != before.hole();
        }
    }

    /**
     * Corrects a sitting's conditions. The soundhole decides which names are suggested, so a correction there
     * adds an analysis.
     *
     * @param id which sitting
     * @param change from what is known to what shall be known
     * @param progress told about each file and step of a new analysis
     * @return what was done; the correction is kept even if the new analysis failed
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such sitting
     */
    public Edited edit(SittingId id, UnaryOperator<Conditions> change, Progress progress) {
        Sitting kept = new ShowSitting(sittings).show(id);
        Conditions before = kept.conditions();
        Conditions after = change.apply(before);
        if (!after.equals(before)) {
            sittings.correct(id, after);
        }
        // An edit that changes nothing repeats one whose analysis may have failed; the same result adds nothing.
        Optional<Analysis> added = Optional.empty();
        Optional<RuntimeException> failure = Optional.empty();
        if (after.hole() != before.hole() || after.equals(before)) {
            try {
                added = Optional.of(reanalyse.reanalyse(id, Optional.empty(), progress))
                        .filter(latest -> latest.number() != kept.latest().number());
            } catch (RuntimeException e) {
                failure = Optional.of(e);
            }
        }
        return new Edited(new ShowSitting(sittings).show(id), before, added, failure);
    }

    /**
     * What was written down before it was corrected.
     *
     * @param id which sitting
     * @return oldest first
     */
    public List<Conditions> corrected(SittingId id) {
        return sittings.corrected(id);
    }
}
