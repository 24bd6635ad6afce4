package io.github.tapwright.comparison;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import java.util.HashSet;
import java.util.List;

/**
 * Sittings a study may rest on: enough of them, each for itself, all of one kind and one instrument.
 *
 * @param sittings where sittings are kept
 * @param remedy what to do for each sitting, such as "take the instrument down and put it up again for each"
 */
public record SetUps(SittingStore sittings, String remedy) {

    /**
     * Checks them, all but their conditions.
     *
     * @param ids their numbers
     * @return their outlines, in the order given
     * @throws RefusedEntryException if there are too few, one is given twice, two hold the same recording, or they are of different kinds or
     *     instruments
     */
    public List<SittingOutline> of(List<SittingId> ids) {
        if (new HashSet<>(ids).size() != ids.size()) {
            throw new RefusedEntryException("a sitting is given twice; give each set-up once");
        }
        if (ids.size() < BenchStudy.FEWEST) {
            throw new RefusedEntryException("a study needs " + BenchStudy.FEWEST + " set-ups at least, better "
                    + BenchStudy.ENOUGH + "; " + remedy);
        }
        List<SittingOutline> setUps = new ShowSitting(sittings).outlines(ids);
        refuseOneRecordingTwice(ids);
        setUps.forEach(other -> refuseMixed(setUps.get(0), other));
        return setUps;
    }

    private void refuseOneRecordingTwice(List<SittingId> ids) {
        for (List<SittingId> holders : sittings.sharing()) {
            List<String> given = holders.stream()
                    .filter(ids::contains)
                    .map(SittingId::toString)
                    .toList();
            if (given.size() > 1) {
                throw new RefusedEntryException("sittings " + String.join(" and ", given)
                        + " hold the same recording, which is one set-up; give one of them, and " + remedy
                        + " of the others");
            }
        }
    }

    private static void refuseMixed(SittingOutline first, SittingOutline other) {
        if (!other.procedure().equals(first.procedure())) {
            throw new RefusedEntryException("sitting " + first.id() + " is for " + first.procedure() + ", sitting "
                    + other.id() + " for " + other.procedure()
                    + "; a study takes sittings of one kind: taps, notes or plucks");
        }
        if (!other.instrument().equals(first.instrument())) {
            throw new RefusedEntryException("sitting " + other.id() + " is of instrument " + other.instrument()
                    + ", sitting " + first.id() + " of " + first.instrument() + "; a study is of one instrument");
        }
    }
}
