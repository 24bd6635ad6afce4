package io.github.tapwright.exchange;

import io.github.tapwright.comparison.Change;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingComparison;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.statistics.Estimate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The JSON of a comparison of two sittings. */
public final class ComparisonJson {

    private static final List<Field<SetUpSpread>> SPREAD = List.of(
            Field.of("frequency_percent", s -> 100 * s.frequencyShare()),
            Field.of("q_percent", s -> 100 * s.qShare()),
            Field.of("level_db", SetUpSpread::levelDb));

    private static final List<Field<ResonanceChange>> CHANGES = Stream.of(
                    List.<Field<ResonanceChange>>of(Field.maybe("name", ResonanceChange::name)),
                    figure("frequency", "_hz", Resonance::frequencyHz, ResonanceChange::frequencyHz),
                    figure("q", "", Resonance::q, ResonanceChange::q),
                    figure("level", "_db", Resonance::levelDb, ResonanceChange::levelDb))
            .flatMap(List::stream)
            .toList();

    private ComparisonJson() {}

    /**
     * A comparison.
     *
     * @param first before
     * @param second after
     * @param comparison what was found
     * @param differences the conditions that differ or are not known, one line each
     * @param spread how far setting up again moves the figures
     * @return an object; "…_differs" is true outside the 95 % interval and false where one cannot tell
     */
    public static String of(
            Sitting first, Sitting second, SittingComparison comparison, List<String> differences, SetUpSpread spread) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("a", JsonText.object(SittingFields.ALL, first));
        document.put("b", JsonText.object(SittingFields.ALL, second));
        document.put("method_version_a", first.latest().methodVersion());
        document.put("method_version_b", second.latest().methodVersion());
        document.put("not_the_same_or_not_known", differences);
        document.put("set_up_spread", JsonText.object(SPREAD, spread));
        document.put("changes", JsonText.array(CHANGES, comparison.changes()));
        document.put("in_a_alone", alone(comparison.onlyFirst()));
        document.put("in_b_alone", alone(comparison.onlySecond()));
        return JsonText.of(document);
    }

    private static List<Map<String, @Nullable Object>> alone(List<ShownResonance> shown) {
        return JsonText.array(
                ResonanceRow.FIELDS, shown.stream().map(ResonanceRow::of).toList());
    }

    private static List<Field<ResonanceChange>> figure(
            String what, String unit, Function<Resonance, Estimate> of, Function<ResonanceChange, Change> change) {
        return List.of(
                Field.of("a_" + what + unit, c -> of.apply(c.first()).value()),
                Field.of("b_" + what + unit, c -> of.apply(c.second()).value()),
                Field.of(
                        what + "_change" + unit,
                        c -> change.apply(c).difference().value()),
                Field.of(
                        what + "_change_u" + unit,
                        c -> change.apply(c).difference().standardUncertainty()),
                Field.of(
                        what + "_change_half_width_95" + unit,
                        c -> change.apply(c).difference().halfWidth95()),
                Field.of(what + "_differs", c -> change.apply(c).differs()));
    }
}
