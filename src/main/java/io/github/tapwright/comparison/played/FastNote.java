package io.github.tapwright.comparison.played;

import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Fingerboard;
import java.util.List;
import java.util.stream.Stream;

/**
 * A note that dies away much faster than its neighbours in one of two runs or in both: a wolf or dead note that stayed, went or came.
 *
 * @param place where
 * @param first what was found in the first run
 * @param second what was found in the second run
 */
public record FastNote(Fret place, Fate first, Fate second) {

    /** What a run says of a place. */
    public enum Fate {
        /** It dies away fast. */
        FAST,
        /** It rings as its neighbours do. */
        RINGS,
        /** It was not played, has no decay to judge, or too few neighbours. */
        UNKNOWN
    }

    static List<FastNote> of(Fingerboard first, Fingerboard second) {
        return Stream.of(first, second)
                .flatMap(b -> b.fastDecays().stream())
                .map(FastDecay::place)
                .distinct()
                .sorted()
                .map(place -> new FastNote(place, fate(first, place), fate(second, place)))
                .toList();
    }

    private static Fate fate(Fingerboard board, Fret place) {
        if (board.fastDecays().stream().anyMatch(f -> f.place().equals(place))) {
            return Fate.FAST;
        }
        return board.wasJudged(place) ? Fate.RINGS : Fate.UNKNOWN;
    }

    /**
     * What became of it.
     *
     * @return a sentence without a full stop
     */
    public String words() {
        String where = "string " + place.string() + ", fret " + place.fret() + ": ";
        if (first == Fate.FAST && second == Fate.FAST) {
            return where + "dies away fast in both";
        }
        return where
                + (first == Fate.FAST
                        ? "died away fast in A, " + other(second) + " in B"
                        : "dies away fast in B, " + other(first) + " in A");
    }

    private static String other(Fate fate) {
        return fate == Fate.RINGS ? "rings as its neighbours do" : "not played or not to be judged";
    }
}
