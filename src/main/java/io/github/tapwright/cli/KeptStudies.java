package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The studies that hold, one of each kind at most; one whose sittings no longer go together hides no other.
 *
 * @param taps of taps
 * @param played of notes, of plucks
 * @param lapsed what is wrong with the others
 */
record KeptStudies(Optional<BenchStudy> taps, List<PlayingStudy> played, List<RefusedEntryException> lapsed) {

    static KeptStudies in(OpenBench open) {
        List<RefusedEntryException> lapsed = new ArrayList<>();
        Optional<BenchStudy> taps = held(() -> open.studyBench().latest(), lapsed);
        List<PlayingStudy> played = Procedure.PLAYED.stream()
                .flatMap(p -> held(() -> open.studyPlaying().latest(p), lapsed).stream())
                .toList();
        return new KeptStudies(taps, played, lapsed);
    }

    private static <T> Optional<T> held(Supplier<Optional<T>> study, List<RefusedEntryException> lapsed) {
        try {
            return study.get();
        } catch (RefusedEntryException e) {
            lapsed.add(e);
            return Optional.empty();
        }
    }

    boolean isEmpty() {
        return count() == 0;
    }

    int count() {
        return (taps.isPresent() ? 1 : 0) + played.size();
    }
}
