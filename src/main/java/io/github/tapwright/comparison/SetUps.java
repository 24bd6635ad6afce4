package io.github.tapwright.comparison;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Sittings a study may rest on: enough of them, each for itself, all of one kind and one instrument.
 *
 * @param sittings where sittings are kept
 * @param remedy what to do for each sitting, such as "take the instrument down and put it up again for each"
 */
public record SetUps(SittingStore sittings, String remedy) {

    /** What to do about a sitting that does not go with the others. */
    public static final String LEAVE_OUT =
            "leave one out, or correct it with sitting edit if it is written down wrongly";

    /**
     * Checks them, and of their conditions what is no matter of setting up: how far the instrument had come, and whether it had strings on.
     *
     * @param ids their numbers
     * @return their outlines, in the order given
     * @throws RefusedEntryException if there are too few, one is given twice or set aside, two hold the same recording, they
     *     are of different kinds or instruments, or the instrument was worked on in between
     */
    public List<SittingOutline> of(List<SittingId> ids) {
        if (new HashSet<>(ids).size() != ids.size()) {
            throw new RefusedEntryException("a sitting is given twice; give each set-up once");
        }
        if (ids.size() < BenchStudy.FEWEST) {
            throw new RefusedEntryException("a study needs " + BenchStudy.FEWEST + " set-ups at least, better "
                    + BenchStudy.ENOUGH + "; " + remedy);
        }
        List<SittingOutline> setUps = new ShowSitting(sittings).useOutlines(ids);
        refuseOneRecordingTwice(ids);
        setUps.forEach(other -> refuseMixed(setUps.get(0), other));
        for (int i = 0; i < setUps.size(); i++) {
            SittingOutline first = setUps.get(i);
            setUps.subList(i + 1, setUps.size()).forEach(other -> refuseWorkedOn(first, other));
        }
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

    /** Finishing and stringing an instrument is no setting up again; that it grew older is ({@link StudyDoubts}). */
    private static void refuseWorkedOn(SittingOutline first, SittingOutline other) {
        Pair<Stage> stage = Pair.of(first.conditions(), other.conditions(), Conditions::stage);
        boolean bothStrung = Stream.of(stage.first(), stage.second())
                .allMatch(s -> s.map(StageClass::of).equals(Optional.of(StageClass.STRUNG)));
        if (stage.differ() && !bothStrung) {
            throw workedOn(first, other, stage.words(Stage::words));
        }
        Pair<Boolean> strings = Pair.of(
                first.conditions(), other.conditions(), c -> c.strings().state().map(s -> s != StringState.OFF));
        if (strings.differ()) {
            throw workedOn(first, other, strings.words(on -> on ? "strings on" : "strings off"));
        }
    }

    private static RefusedEntryException workedOn(SittingOutline first, SittingOutline other, String words) {
        return new RefusedEntryException(
                "the instrument was worked on between sittings " + first.id() + " and " + other.id() + ", " + words
                        + "; a study is of one instrument as it is, set up again and not changed: "
                        + LEAVE_OUT);
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
