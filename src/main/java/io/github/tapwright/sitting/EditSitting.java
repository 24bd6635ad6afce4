package io.github.tapwright.sitting;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Corrects what was written down about a sitting; recordings and figures are not touched. */
public final class EditSitting {

    private final SittingStore sittings;
    private final ReanalyseSitting reanalyse;
    private final PossibleDates dates;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param reanalyse what computes results anew
     * @param clock tells the day, in the workshop's zone
     */
    public EditSitting(SittingStore sittings, ReanalyseSitting reanalyse, Clock clock) {
        this.sittings = sittings;
        this.reanalyse = reanalyse;
        this.dates = new PossibleDates(clock);
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
            Sitting sitting, WrittenDown before, Optional<Analysis> added, Optional<RuntimeException> failure) {

        /**
         * Whether what decides the suggested names was corrected.
         *
         * @return true if the soundhole is written down otherwise than before; what was played has no names that rest on it
         */
        public boolean holeChanged() {
            return sitting.latest().findings().procedure() instanceof Procedure.BodyTaps
                    && sitting.conditions().hole() != before.conditions().hole();
        }
    }

    /**
     * Corrects a sitting's instrument, date and conditions; recordings, results and names go with it. The soundhole decides
     * which names of resonances are suggested, so a correction there adds an analysis of taps; what was played is left as it was measured.
     *
     * @param id which sitting
     * @param change from what is known to what shall be known
     * @param progress told about each file and step of a new analysis
     * @return what was done; the correction is kept even if the new analysis failed
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such sitting or instrument, or a day cannot be
     */
    public Edited edit(SittingId id, UnaryOperator<WrittenDown> change, Progress progress) {
        Sitting kept = new ShowSitting(sittings).show(id);
        WrittenDown before = WrittenDown.of(kept);
        WrittenDown after = change.apply(before);
        refuseImpossible(before, after);
        if (!after.equals(before)) {
            sittings.correct(id, after);
        }
        // An edit that changes nothing repeats one whose analysis may have failed; the same result adds nothing.
        Optional<Analysis> added = Optional.empty();
        Optional<RuntimeException> failure = Optional.empty();
        boolean named = kept.latest().findings().procedure() instanceof Procedure.BodyTaps;
        if (named && (after.conditions().hole() != before.conditions().hole() || after.equals(before))) {
            try {
                added = Optional.of(reanalyse.reanalyse(id, Optional.empty(), progress))
                        .filter(latest -> latest.number() != kept.latest().number());
            } catch (RuntimeException e) {
                failure = Optional.of(e);
            }
        }
        return new Edited(new ShowSitting(sittings).show(id), before, added, failure);
    }

    /** Only what is new: whoever corrects the humidity of an old sitting need not put its days right. */
    private void refuseImpossible(WrittenDown before, WrittenDown after) {
        boolean otherDay = !after.takenAt().equals(before.takenAt());
        if (otherDay) {
            dates.refuseImpossible(after.takenAt(), sittings.lastAdded());
        }
        if (otherDay
                || !after.conditions()
                        .strings()
                        .fittedOn()
                        .equals(before.conditions().strings().fittedOn())) {
            dates.refuseLaterStrings(after.takenAt().instant(), after.conditions());
        }
    }

    /**
     * What was written down before it was corrected.
     *
     * @param id which sitting
     * @return oldest first
     */
    public List<WrittenDown> corrected(SittingId id) {
        return sittings.corrected(id);
    }
}
