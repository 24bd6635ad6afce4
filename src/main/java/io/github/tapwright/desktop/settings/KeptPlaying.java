package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.KeptStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.played.PlayingSpread;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.comparison.played.StudyPlaying;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far playing again moves figures of one kind of sittings, and where that is known from.
 *
 * @param kind notes or plucks
 * @param spread what comparisons count with
 * @param kept the study kept
 */
record KeptPlaying(StudyKind kind, PlayingSpread spread, KeptStudy<PlayingStudy> kept) {

    /** What holds now, with the maker's own figures or without. */
    static KeptPlaying of(StudyKind kind, StudyPlaying studies, Optional<SetUpSpread> own) {
        KeptStudy<PlayingStudy> kept = studies.kept(kind.procedure());
        return new KeptPlaying(kind, StudyPlaying.spread(own, kept), kept);
    }

    private boolean isGiven() {
        return spread.otherwise().level().basis() == SetUpSpread.Basis.GIVEN;
    }

    /** What holds and what it rests on. */
    List<String> sentences(ZoneId zone) {
        String procedure = kind.procedure();
        List<String> sentences = new ArrayList<>();
        sentences.add("Between sittings of " + procedure + " playing again moves " + spread.words(procedure) + ".");
        kept.study()
                .ifPresent(study -> sentences.add("The study of " + procedure + " kept: "
                        + BenchSpread.words(study.sittings(), kind, zone)
                        + (isGiven() ? BenchSpread.instead(study.words()) : "")));
        return sentences;
    }
}
