package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.KeptStudy;
import io.github.tapwright.comparison.LapsedStudy;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.sitting.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The studies that hold, one of each kind at most; one that holds no longer hides no other.
 *
 * @param taps of taps
 * @param played of notes, of plucks
 * @param lapsed the others, each with what is wrong
 */
record KeptStudies(Optional<BenchStudy> taps, List<PlayingStudy> played, List<LapsedStudy> lapsed) {

    static KeptStudies in(OpenBench open) {
        KeptStudy<BenchStudy> taps = open.studyBench().kept();
        List<PlayingStudy> played = new ArrayList<>();
        List<LapsedStudy> lapsed = new ArrayList<>(lapsed(Procedure.BodyTaps.KEY, taps));
        for (String procedure : Procedure.PLAYED) {
            KeptStudy<PlayingStudy> kept = open.studyPlaying().kept(procedure);
            kept.study().ifPresent(played::add);
            lapsed.addAll(lapsed(procedure, kept));
        }
        return new KeptStudies(taps.study(), played, lapsed);
    }

    private static List<LapsedStudy> lapsed(String procedure, KeptStudy<?> kept) {
        return kept.lapse().stream()
                .map(reason -> new LapsedStudy(procedure, reason))
                .toList();
    }

    boolean isEmpty() {
        return count() == 0;
    }

    int count() {
        return (taps.isPresent() ? 1 : 0) + played.size();
    }
}
