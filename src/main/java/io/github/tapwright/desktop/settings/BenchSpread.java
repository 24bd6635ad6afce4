package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.KeptStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.StudyDoubts;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.sitting.SittingOutline;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How far setting up again, and playing again, moves figures on this bench, and where that is known from.
 *
 * @param spread what comparisons of taps count with
 * @param taps the study of taps kept, which they count with unless the maker gave figures
 * @param notes what comparisons of notes count with
 * @param plucks what comparisons of plucks count with
 */
record BenchSpread(SetUpSpread spread, KeptStudy<BenchStudy> taps, KeptPlaying notes, KeptPlaying plucks) {

    /** What holds now, with the maker's own figures or without. */
    static BenchSpread of(StudyBench bench, StudyPlaying playing, Optional<SetUpSpread> own) {
        KeptStudy<BenchStudy> taps = bench.kept();
        return new BenchSpread(
                StudyBench.spread(own, taps),
                taps,
                KeptPlaying.of(StudyKind.NOTES, playing, own),
                KeptPlaying.of(StudyKind.PLUCKS, playing, own));
    }

    /** The study of one kind that holds. */
    Optional<Study> study(StudyKind kind) {
        return switch (kind) {
            case TAPS -> taps.study().map(Study.OfTaps::new);
            case NOTES -> notes.kept().study().map(Study.OfPlaying::new);
            case PLUCKS -> plucks.kept().study().map(Study.OfPlaying::new);
        };
    }

    private KeptStudy<?> kept(StudyKind kind) {
        return switch (kind) {
            case TAPS -> taps;
            case NOTES -> notes.kept();
            case PLUCKS -> plucks.kept();
        };
    }

    /** Whether a study of a kind is kept, though it may no longer hold. */
    boolean keepsOne(StudyKind kind) {
        return kept(kind).exists();
    }

    /** The figures of one kind, where they come from, and what to do where that is not good enough. */
    List<String> sentences(StudyKind kind, ZoneId zone) {
        List<String> sentences = new ArrayList<>(
                switch (kind) {
                    case TAPS -> ofTaps(zone);
                    case NOTES -> notes.sentences(zone);
                    case PLUCKS -> plucks.sentences(zone);
                });
        study(kind).ifPresent(study -> sentences.addAll(study.cautions()));
        KeptStudy<?> kept = kept(kind);
        kept.lapse()
                .ifPresent(why ->
                        sentences.add("The study of " + kind.procedure() + " kept no longer holds: " + why + "."));
        if (!kept.exists()) {
            sentences.add("No study of " + kind.procedure() + " is kept yet. " + kind.remedy());
        }
        return sentences;
    }

    private List<String> ofTaps(ZoneId zone) {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "Comparisons of taps, timelines and reports of them take it that setting up again moves figures by "
                        + spread.words() + " (one standard deviation): " + spread.basisWords() + ".");
        taps.study()
                .ifPresent(kept -> sentences.add("The study of taps kept: "
                        + words(kept.sittings(), StudyKind.TAPS, zone) + (isGiven() ? instead(kept) : "")));
        return sentences;
    }

    private boolean isGiven() {
        return spread.frequency().basis() == SetUpSpread.Basis.GIVEN;
    }

    private static String instead(BenchStudy kept) {
        return kept.spread().map(s -> instead(s.words())).orElse("");
    }

    /** What a study says that the maker's own figures go before. */
    static String instead(String words) {
        return " It would say " + words + "; empty your own figures to count with it.";
    }

    /** What a study rests on. */
    static String words(List<SittingOutline> studied, StudyKind kind, ZoneId zone) {
        List<LocalDate> days = studied.stream()
                .map(s -> day(s.takenAt().instant(), zone))
                .sorted()
                .distinct()
                .toList();
        String when = days.get(0) + (days.size() > 1 ? " to " + days.get(days.size() - 1) : "");
        String doubts = StudyDoubts.of(studied).stream().map(d -> " " + d).collect(Collectors.joining());
        return studied.size() + " " + kind.called() + " of instrument "
                + studied.get(0).instrument() + ", " + when + " (sittings "
                + studied.stream().map(s -> s.id().toString()).collect(Collectors.joining(", ")) + ")." + doubts;
    }

    private static LocalDate day(Instant instant, ZoneId zone) {
        return LocalDate.ofInstant(instant, zone);
    }
}
