package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.SittingOutline;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How far setting up again moves figures on this bench, and where that is known from.
 *
 * @param spread what comparisons count with
 * @param study the study kept, which they count with unless the maker gave figures; empty if there is none that holds
 * @param lapse why the study kept no longer holds; empty if it does, or none was kept
 * @param playing what comparisons of notes and of plucks count with
 */
record BenchSpread(SetUpSpread spread, Optional<BenchStudy> study, Optional<String> lapse, List<KeptPlaying> playing) {

    /** What holds now, with the maker's own figures or without. */
    static BenchSpread of(SpreadModel.UseCases use, Optional<SetUpSpread> own) {
        StudyBench bench = use.studyBench();
        SetUpSpread spread = bench.spread(own);
        List<KeptPlaying> playing = KeptPlaying.all(use.studyPlaying(), own);
        try {
            return new BenchSpread(spread, bench.latest(), Optional.empty(), playing);
        } catch (RefusedEntryException e) {
            return new BenchSpread(spread, Optional.empty(), Optional.of(String.valueOf(e.getMessage())), playing);
        }
    }

    /** The figures, where they come from, and what to do where that is not good enough. */
    List<String> sentences(ZoneId zone) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "Comparisons of taps, timelines and reports of them take it that setting up again moves figures by "
                        + spread.words() + " (one standard deviation): " + spread.basisWords() + ".");
        study.ifPresent(kept ->
                sentences.add("The study of taps kept: " + words(kept, zone) + (isGiven() ? instead(kept) : "")));
        lapse.ifPresent(why -> sentences.add("The study of taps kept no longer holds: " + why + "."));
        if (study.isEmpty() && lapse.isEmpty()) {
            sentences.add(
                    "No study of taps is kept yet. Choose Repeatability on the Sitting screen and set one guitar up "
                            + BenchStudy.ENOUGH + " times, or tick sittings below that were made so.");
        }
        playing.forEach(p -> sentences.addAll(p.sentences(zone)));
        return sentences;
    }

    /** Whether a study of any kind is kept, though it may no longer hold. */
    boolean keepsOne() {
        return study.isPresent() || lapse.isPresent() || playing.stream().anyMatch(KeptPlaying::isKept);
    }

    private boolean isGiven() {
        return spread.frequency().basis() == SetUpSpread.Basis.GIVEN;
    }

    private static String instead(BenchStudy kept) {
        return kept.spread()
                .map(s -> " It would say " + s.words() + "; empty your own figures to count with it.")
                .orElse("");
    }

    /** What a study rests on. */
    static String words(BenchStudy study, ZoneId zone) {
        return words(study.sittings(), "set-ups", zone);
    }

    /** The same of sittings that are called otherwise. */
    static String words(List<SittingOutline> setUps, String called, ZoneId zone) {
        List<LocalDate> days = setUps.stream()
                .map(s -> day(s.takenAt().instant(), zone))
                .sorted()
                .distinct()
                .toList();
        String when = days.get(0) + (days.size() > 1 ? " to " + days.get(days.size() - 1) : "");
        String doubt = setUps.size() < BenchStudy.ENOUGH
                ? " Fewer than " + BenchStudy.ENOUGH + " " + called + ": its figures are themselves uncertain."
                : "";
        return setUps.size() + " " + called + " of instrument " + setUps.get(0).instrument() + ", " + when
                + " (sittings " + setUps.stream().map(s -> s.id().toString()).collect(Collectors.joining(", ")) + ")."
                + doubt;
    }

    private static LocalDate day(Instant instant, ZoneId zone) {
        return LocalDate.ofInstant(instant, zone);
    }
}
