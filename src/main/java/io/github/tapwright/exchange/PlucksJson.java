package io.github.tapwright.exchange;

import io.github.tapwright.comparison.PluckComparison;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.StudentProbability;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The JSON of plucks and of their comparison. */
public final class PlucksJson {

    private static final List<Field<PluckComparison.OnString>> ON_STRING = List.of(
            Field.of("string", PluckComparison.OnString::string),
            Field.of("a_count", s -> s.first().count()),
            Field.of("a_mean", s -> s.first().mean()),
            Field.maybe("a_standard_deviation", s -> s.first().deviation()),
            Field.of("b_count", s -> s.second().count()),
            Field.of("b_mean", s -> s.second().mean()),
            Field.maybe("b_standard_deviation", s -> s.second().deviation()),
            Field.maybe("difference", s -> s.difference().map(Estimate::value)),
            Field.maybe("difference_u", s -> s.difference().map(Estimate::standardUncertainty)),
            Field.maybe("difference_half_width_95", s -> s.difference().map(Estimate::halfWidth95)),
            Field.maybe("p", PluckComparison.OnString::probability),
            Field.maybe("p_adjusted", PluckComparison.OnString::adjustedProbability),
            Field.maybe("plucks_needed_to_tell_1", PluckComparison.OnString::plucksNeeded));

    private PlucksJson() {}

    /**
     * Plucks of one instrument or two, and how they compare.
     *
     * @param first recordings and plucks of the first
     * @param second recordings and plucks of the second; no plucks if there is none
     * @param comparisons one for each quantity
     * @param unit what levels are relative to
     * @return an object; "caution", what the intervals do not hold, is null where nothing is compared
     */
    public static String of(Side first, Side second, List<PluckComparison> comparisons, String unit) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("level_unit", unit);
        document.put("a", JsonText.array(PluckRow.FIELDS, PluckRow.of(first.files(), first.plucks())));
        document.put("b", JsonText.array(PluckRow.FIELDS, PluckRow.of(second.files(), second.plucks())));
        document.put(
                "warnings",
                Stream.concat(first.remarks().stream(), second.remarks().stream())
                        .toList());
        document.put(
                "comparisons", comparisons.stream().map(PlucksJson::comparison).toList());
        document.put("caution", comparisons.isEmpty() ? null : PluckComparison.CAUTION);
        return JsonText.of(document);
    }

    /**
     * One instrument's recordings and plucks.
     *
     * @param files as given
     * @param plucks in the order played
     * @param remarks what a reader must know about the files
     */
    public record Side(List<String> files, List<Pluck> plucks, List<String> remarks) {

        /** Keeps copies of the lists. */
        public Side {
            files = List.copyOf(files);
            plucks = List.copyOf(plucks);
            remarks = List.copyOf(remarks);
        }
    }

    private static Map<String, @Nullable Object> comparison(PluckComparison comparison) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("quantity", comparison.quantity());
        document.put("unit", comparison.unit());
        document.put("strings", JsonText.array(ON_STRING, comparison.strings()));
        document.put("overall", comparison.overall().map(Estimate::value).orElse(null));
        document.put(
                "overall_u",
                comparison.overall().map(Estimate::standardUncertainty).orElse(null));
        document.put(
                "overall_half_width_95",
                comparison.overall().map(Estimate::halfWidth95).orElse(null));
        document.put(
                "overall_p",
                comparison.overall().map(StudentProbability::twoSided).orElse(null));
        return document;
    }
}
