package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.TwoSittings;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;

/** Compares two sittings of notes, or two of plucks: conditions first, then figures. */
public final class ComparePlayed {

    private final ShowSitting sittings;
    private final StudyPlaying studies;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param studies what knows how far playing again moves figures
     */
    public ComparePlayed(SittingStore sittings, StudyPlaying studies) {
        this.sittings = new ShowSitting(sittings);
        this.studies = studies;
    }

    /**
     * Two sittings and how what was played compares.
     *
     * @param first before
     * @param second after
     * @param again how far setting up and playing again moves figures
     * @param comparison what was found
     */
    public record Compared(Sitting first, Sitting second, PlayingSpread again, PlayedComparison comparison)
            implements TwoSittings {

        @Override
        public Comparability comparability() {
            return comparison.comparability();
        }
    }

    /**
     * Whether a sitting is one of notes or plucks.
     *
     * @param id its number
     * @return false for taps
     * @throws RefusedEntryException if there is no such sitting
     */
    public boolean takes(SittingId id) {
        return studies.takes(id);
    }

    /**
     * Compares.
     *
     * <p>A study of taps says nothing of playing again: without figures given or a study of notes, or of plucks, cautious ones hold.
     *
     * @param a before
     * @param b after
     * @param settings how
     * @return the comparison
     * @throws RefusedEntryException if there is no such sitting, one is set aside, both are the same, or they are not both of
     *     notes or both of plucks
     */
    public Compared compare(SittingId a, SittingId b, CompareSittings.Settings settings) {
        if (a.equals(b)) {
            throw new RefusedEntryException("both are sitting " + a + "; choose two different ones");
        }
        Sitting first = sittings.use(a);
        Sitting second = sittings.use(b);
        PlayingSpread spread =
                studies.spread(first.latest().findings().procedure().key(), settings.spread());
        Comparability comparability = Comparability.ofPlayed(first, second, settings.window(), settings.despite());
        return new Compared(first, second, spread, comparison(first, second, spread, comparability));
    }

    private static PlayedComparison comparison(
            Sitting first, Sitting second, PlayingSpread spread, Comparability comparability) {
        Findings before = first.latest().findings();
        Findings after = second.latest().findings();
        if (before.notes().isPresent() && after.notes().isPresent()) {
            return PlayedComparison.ofNotes(before.notes().get(), after.notes().get(), spread, comparability);
        }
        if (before.plucks().isPresent() && after.plucks().isPresent()) {
            return PlayedComparison.ofPlucks(
                    before.plucks().get(), after.plucks().get(), spread, comparability);
        }
        throw new RefusedEntryException("sitting " + first.id() + " is for "
                + before.procedure().key() + " and sitting " + second.id() + " for "
                + after.procedure().key() + "; choose two of the same kind");
    }
}
