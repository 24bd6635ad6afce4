package io.github.tapwright.comparison.body;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SittingSummary;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds the sittings that belong to an open one: same instrument, same stage, same strings, nearest in time. */
final class Companions {

    private final SittingStore sittings;
    private final Sitting open;

    Companions(SittingStore sittings, Sitting open) {
        this.sittings = sittings;
        this.open = open;
    }

    /** The sitting with the hole open and nothing stuck on. */
    static Sitting open(SittingStore sittings, SittingId id) {
        Sitting sitting = ofTaps(sittings, id);
        if (isCovered(sitting) || isLoaded(sitting)) {
            throw new RefusedEntryException("sitting " + id + " has its "
                    + (isCovered(sitting) ? "hole covered" : "bridge loaded with a mass")
                    + "; choose the sitting with the hole open and no mass, this one is found from there");
        }
        return sitting;
    }

    Optional<Sitting> covered(Optional<SittingId> given) {
        Predicate<Sitting> wanted = s -> isCovered(s) && !isLoaded(s);
        return given.map(id -> given(id, wanted, "the hole covered and no added mass"))
                .or(() -> nearest(s -> s.hole() == HoleState.COVERED, wanted));
    }

    Optional<Sitting> loaded(Optional<SittingId> given) {
        return given.map(id -> given(id, Companions::isLoaded, "an added mass"))
                .or(() -> nearest(s -> s.hole() != HoleState.COVERED, Companions::isLoaded));
    }

    private Sitting given(SittingId id, Predicate<Sitting> wanted, String words) {
        Sitting sitting = ofTaps(sittings, id);
        if (!sitting.instrument().equals(open.instrument())) {
            throw new RefusedEntryException("sitting " + id + " is of instrument " + sitting.instrument() + ", sitting "
                    + open.id() + " of " + open.instrument() + "; a body is one instrument's");
        }
        if (!wanted.test(sitting)) {
            throw new RefusedEntryException("sitting " + id + " is not one with " + words
                    + "; choose another, or correct its conditions with sitting edit");
        }
        return sitting;
    }

    private Optional<Sitting> nearest(Predicate<SittingSummary> line, Predicate<Sitting> wanted) {
        return sittings.list(Optional.of(open.instrument())).stream()
                .filter(s -> isOfSameBody(s) && s.setAside().isEmpty())
                .filter(line)
                .sorted(Comparator.comparing(this::distance))
                .flatMap(s -> sittings.find(s.id()).stream())
                .filter(s -> !differ(
                        s.conditions().strings().state(),
                        open.conditions().strings().state()))
                .filter(wanted)
                .findFirst();
    }

    private boolean isOfSameBody(SittingSummary other) {
        return !other.id().equals(open.id())
                && other.procedure().equals(Procedure.BodyTaps.KEY)
                && !differ(other.stage(), open.conditions().stage());
    }

    /** Of the sittings that could belong to it those that the maker set aside, in words. */
    List<String> passedOver() {
        return sittings.list(Optional.of(open.instrument())).stream()
                .filter(s -> isOfSameBody(s) && (s.loaded() || s.hole() == HoleState.COVERED))
                .flatMap(s -> s.setAside().stream()
                        .map(why -> "sitting " + s.id() + " was left out, set aside: " + why.reason()))
                .toList();
    }

    private Duration distance(SittingSummary other) {
        return Duration.between(other.takenAt().instant(), open.takenAt().instant())
                .abs();
    }

    private static <T> boolean differ(Optional<T> a, Optional<T> b) {
        return a.isPresent() && b.isPresent() && !a.equals(b);
    }

    private static Sitting ofTaps(SittingStore sittings, SittingId id) {
        return new ShowSitting(sittings).use(id).requireTaps();
    }

    static boolean isCovered(Sitting sitting) {
        return sitting.conditions().hole() == HoleState.COVERED;
    }

    private static boolean isLoaded(Sitting sitting) {
        return sitting.conditions().addedMass().isPresent();
    }
}
