package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.played.PlayingSpread;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.Procedure;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far playing again moves figures of one kind of sittings, and where that is known from.
 *
 * @param procedure notes or plucks
 * @param spread what comparisons count with
 * @param study the study kept; empty if there is none that holds
 * @param lapse why the study kept no longer holds; empty if it does, or none was kept
 */
record KeptPlaying(String procedure, PlayingSpread spread, Optional<PlayingStudy> study, Optional<String> lapse) {

    /** One for each kind. */
    static List<KeptPlaying> all(StudyPlaying studies, Optional<SetUpSpread> own) {
        return Procedure.PLAYED.stream().map(p -> of(p, studies, own)).toList();
    }

    private static KeptPlaying of(String procedure, StudyPlaying studies, Optional<SetUpSpread> own) {
        PlayingSpread spread = studies.spread(procedure, own);
        try {
            return new KeptPlaying(procedure, spread, studies.latest(procedure), Optional.empty());
        } catch (RefusedEntryException e) {
            return new KeptPlaying(procedure, spread, Optional.empty(), Optional.of(String.valueOf(e.getMessage())));
        }
    }

    private boolean isGiven() {
        return spread.otherwise().level().basis() == SetUpSpread.Basis.GIVEN;
    }

    boolean isKept() {
        return study.isPresent() || lapse.isPresent();
    }

    /** What holds and what it rests on. */
    List<String> sentences(ZoneId zone) {
        List<String> sentences = new ArrayList<>();
        sentences.add("Between sittings of " + procedure + " playing again moves " + spread.words(procedure) + ".");
        study.ifPresent(kept -> sentences.add("The study of " + procedure + " kept: "
                + BenchSpread.words(kept.sittings(), "sittings", zone)
                + (isGiven() ? " It would say " + kept.words() + "." : "")));
        if (study.isEmpty() && lapse.isEmpty()) {
            sentences.add("No study of " + procedure + " is kept yet: play one guitar anew for " + BenchStudy.ENOUGH
                    + " sittings and keep them with the command repeatability.");
        }
        lapse.ifPresent(why -> sentences.add("The study of " + procedure + " kept no longer holds: " + why + "."));
        return sentences;
    }
}
