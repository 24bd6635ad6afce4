package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.KeptStudy;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.sitting.Procedure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The studies that hold, one of each kind at most; one whose sittings no longer go together hides no other.
 *
 * @param taps of taps
 * @param played of notes, of plucks
 * @param lapsed what is wrong with the others
 */
record KeptStudies(Optional<BenchStudy> taps, List<PlayingStudy> played, List<String> lapsed) {

    static KeptStudies in(OpenBench open) {
        KeptStudy<BenchStudy> taps = open.studyBench().kept();
        List<KeptStudy<PlayingStudy>> played =
                Procedure.PLAYED.stream().map(open.studyPlaying()::kept).toList();
        return new KeptStudies(
                taps.study(),
                played.stream().flatMap(k -> k.study().stream()).toList(),
                Stream.concat(Stream.of(taps), played.stream())
                        .flatMap(k -> k.lapse().stream())
                        .toList());
    }

    boolean isEmpty() {
        return count() == 0;
    }

    int count() {
        return (taps.isPresent() ? 1 : 0) + played.size();
    }
}
