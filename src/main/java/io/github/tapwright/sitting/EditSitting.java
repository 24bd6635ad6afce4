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
     * Corrects a sitting's conditions. The soundhole decides which names are suggested, so a correction there
     * adds an analysis.
     *
     * @param id which sitting
     * @param change from what is known to what shall be known
     * @param progress told about each file and step of a new analysis
     * @return the sitting as it is kept now
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such sitting
     */
    public Sitting edit(SittingId id, UnaryOperator<Conditions> change, Progress progress) {
        Conditions before = new ShowSitting(sittings).show(id).conditions();
        Conditions after = change.apply(before);
        if (!after.equals(before)) {
            sittings.correct(id, after);
        }
        // An edit that changes nothing repeats one whose analysis may have failed; the same result adds nothing.
        if (after.hole() != before.hole() || after.equals(before)) {
            reanalyse.reanalyse(id, Optional.empty(), progress);
        }
        return new ShowSitting(sittings).show(id);
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
