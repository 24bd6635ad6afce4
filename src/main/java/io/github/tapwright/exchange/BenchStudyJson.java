package io.github.tapwright.exchange;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.LapsedStudy;
import io.github.tapwright.comparison.StudiedResonance;
import io.github.tapwright.comparison.StudiedResonance.SetUpScatter;
import io.github.tapwright.comparison.StudyDoubts;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.sitting.SittingOutline;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A study of the bench as JSON and as a CSV table. */
public final class BenchStudyJson {

    private static final List<Field<StudiedResonance>> FIELDS = Stream.of(
                    List.<Field<StudiedResonance>>of(Field.maybe("name", StudiedResonance::name)),
                    scatter("frequency", "_hz", r -> Optional.of(r.frequencyHz())),
                    scatter("q", "", r -> Optional.of(r.q())),
                    scatter("level", "_db", StudiedResonance::levelDb))
            .flatMap(List::stream)
            .toList();

    private static final List<Field<LapsedStudy>> LAPSED =
            List.of(Field.of("procedure", LapsedStudy::procedure), Field.of("reason", LapsedStudy::reason));

    private BenchStudyJson() {}

    /**
     * A study.
     *
     * @param study what was found
     * @return an object; "set_up_spread" is null if no resonance was found in every set-up
     */
    public static String of(BenchStudy study) {
        return JsonText.of(document(Optional.of(study)));
    }

    /**
     * The studies that hold.
     *
     * @param taps of taps; empty if there is none
     * @param played of notes, of plucks
     * @param lapsed those kept that hold no longer
     * @return the object of the study of taps, without sittings and resonances if there is none, those of the others in "playing", and in
     *     "lapsed" what is wrong with those that hold no longer
     */
    public static String kept(Optional<BenchStudy> taps, List<PlayingStudy> played, List<LapsedStudy> lapsed) {
        Map<String, @Nullable Object> document = document(taps);
        document.put("playing", played.stream().map(PlayingStudyJson::document).toList());
        document.put("lapsed", JsonText.array(LAPSED, lapsed));
        return JsonText.of(document);
    }

    private static Map<String, @Nullable Object> document(Optional<BenchStudy> study) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put(
                "sittings",
                study.stream()
                        .flatMap(s -> s.sittings().stream())
                        .map(SittingOutline::id)
                        .map(Object::toString)
                        .toList());
        document.put("warnings", study.map(s -> StudyDoubts.of(s.sittings())).orElse(List.of()));
        document.put(
                "resonances",
                JsonText.array(FIELDS, study.map(BenchStudy::resonances).orElse(List.of())));
        document.put(
                "set_up_spread",
                study.flatMap(BenchStudy::spread)
                        .map(s -> JsonText.object(ComparisonJson.SPREAD, s))
                        .orElse(null));
        return document;
    }

    /**
     * One line for each resonance.
     *
     * @param study what was found
     * @return the text of a CSV file
     */
    public static String csv(BenchStudy study) {
        return CsvText.of(FIELDS, study.resonances());
    }

    private static List<Field<StudiedResonance>> scatter(
            String what, String unit, Function<StudiedResonance, Optional<SetUpScatter>> of) {
        return List.of(
                Field.maybe(what + "_mean" + unit, r -> of.apply(r).map(SetUpScatter::mean)),
                Field.maybe(what + "_s_r" + unit, r -> of.apply(r).map(SetUpScatter::withinSetUp)),
                Field.maybe(what + "_s_l" + unit, r -> of.apply(r).map(SetUpScatter::betweenSetUps)),
                Field.maybe(what + "_s_capital_r" + unit, r -> of.apply(r).map(SetUpScatter::reproducibility)));
    }
}
