package io.github.tapwright.exchange;

import io.github.tapwright.comparison.StudyDoubts;
import io.github.tapwright.comparison.played.PlayedScatter;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.sitting.SittingOutline;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A study of playing again as JSON and as a CSV table; standard deviations of decay times are those of their logarithms. */
public final class PlayingStudyJson {

    private static final List<Field<PlayedScatter>> FIELDS = List.of(
            Field.of("quantity", s -> s.quantity().words()),
            Field.of("figure_unit", s -> s.quantity().figureUnit()),
            Field.of("mean", PlayedScatter::mean),
            Field.of("strings", PlayedScatter::strings),
            Field.of("figures", PlayedScatter::figures),
            Field.of("scale", s -> s.quantity().scale()),
            Field.of("s_r", s -> s.scatter().withinSetUp()),
            Field.of("s_l", s -> s.scatter().betweenSetUps()),
            Field.of("s_capital_r", s -> s.scatter().reproducibility()),
            Field.of("s_capital_r_low_95", s -> s.reproducibility95().lower()),
            Field.of("s_capital_r_high_95", s -> s.reproducibility95().upper()),
            Field.of("counted", s -> s.counted().deviation()),
            Field.of("counted_degrees_of_freedom", s -> s.counted().degreesOfFreedom()),
            Field.of("mostly_within_sittings", PlayedScatter::isMostlyWithin));

    private static final List<Field<PlayingStudy.NotStudied>> NOT_STUDIED = List.of(
            Field.of("quantity", n -> n.quantity().words()), Field.of("reason", PlayingStudy.NotStudied::reason));

    private PlayingStudyJson() {}

    /**
     * A study of notes or of plucks.
     *
     * @param study what was found
     * @return an object
     */
    public static String of(PlayingStudy study) {
        return JsonText.of(document(study));
    }

    static Map<String, @Nullable Object> document(PlayingStudy study) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("procedure", study.procedure());
        document.put(
                "sittings",
                study.sittings().stream()
                        .map(SittingOutline::id)
                        .map(Object::toString)
                        .toList());
        document.put("warnings", StudyDoubts.of(study.sittings()));
        document.put("quantities", JsonText.array(FIELDS, study.scatters()));
        document.put("not_studied", JsonText.array(NOT_STUDIED, study.notStudied()));
        document.put("in_words", study.words());
        return document;
    }

    /**
     * One line for each quantity.
     *
     * @param study what was found
     * @return the text of a CSV file
     */
    public static String csv(PlayingStudy study) {
        return CsvText.of(FIELDS, study.scatters());
    }
}
