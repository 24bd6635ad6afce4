package io.github.tapwright.exchange;

import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Correction;
import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingComparison;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.statistics.UncertaintyBudget;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The JSON of a comparison of two sittings. */
public final class ComparisonJson {

    static final List<Field<SetUpSpread>> SPREAD = List.of(
            Field.of("frequency_percent", s -> 100 * s.frequencyShare()),
            Field.of("q_percent", s -> 100 * s.qShare()),
            Field.of("level_db", SetUpSpread::levelDb),
            Field.of("degrees_of_freedom", s -> s.frequency().degreesOfFreedom()),
            Field.of("basis", SetUpSpread::basisWords),
            Field.of("frequency_basis", s -> s.frequency().basis().words()),
            Field.of("q_basis", s -> s.q().basis().words()),
            Field.of("q_degrees_of_freedom", s -> s.q().degreesOfFreedom()),
            Field.of("level_basis", s -> s.level().basis().words()),
            Field.of("level_degrees_of_freedom", s -> s.level().degreesOfFreedom()));

    static final List<Field<KnownScatter>> SCATTER = List.of(
            Field.of("level_db", KnownScatter::deviation),
            Field.of("degrees_of_freedom", KnownScatter::degreesOfFreedom),
            Field.of("basis", s -> s.basis().words()));

    private static final List<Field<Correction.Part>> CORRECTIONS = List.of(
            Field.of("cause", Correction.Part::cause),
            Field.of("added", p -> p.added().value()),
            Field.of("added_u", p -> p.added().standardUncertainty()),
            Field.of("basis", Correction.Part::basis));

    private ComparisonJson() {}

    /**
     * A comparison.
     *
     * @param compared both sittings and what was found
     * @param passedOver later sittings set aside, where the latest of an instrument was asked for
     * @return an object; figures of a refused quantity are null, and so is the level of the one that {@code level_reference} names
     */
    public static String of(CompareSittings.Compared compared, List<LeftOut> passedOver) {
        SittingComparison comparison = compared.comparison();
        BenchKnowledge bench = compared.bench();
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("a", JsonText.object(SittingFields.ALL, compared.first()));
        document.put("b", JsonText.object(SittingFields.ALL, compared.second()));
        document.put("method_version_a", compared.first().latest().methodVersion());
        document.put("method_version_b", compared.second().latest().methodVersion());
        document.put("comparability", comparability(comparison.comparability()));
        document.put("despite", comparison.comparability().despite().orElse(null));
        document.put("set_up_spread", JsonText.object(SPREAD, bench.spread()));
        document.put("humidity_sensitivity", SensitivityJson.of(bench.sensitivities()));
        document.put("level_reference", levelReference(comparison.changes()));
        document.put("questions", comparison.questions());
        document.put(
                "changes",
                comparison.changes().stream().map(c -> change(c, bench)).toList());
        document.put("in_a_alone", alone(comparison.onlyFirst()));
        document.put("in_b_alone", alone(comparison.onlySecond()));
        document.put("left_out", JsonText.array(GroupStudyJson.LEFT_OUT, passedOver));
        return JsonText.of(document);
    }

    /** One quantity of one resonance. */
    private record Row(ResonanceChange change, Difference difference) {

        static Stream<Row> of(ResonanceChange change) {
            return change.differences().stream().map(d -> new Row(change, d));
        }

        Optional<Double> shown(ToDoubleFunction<Difference> figure) {
            return difference.shown() ? Optional.of(figure.applyAsDouble(difference)) : Optional.empty();
        }
    }

    private static final List<Field<Row>> ROWS = List.of(
            Field.maybe("name", r -> r.change.name()),
            Field.of("a_frequency_hz", r -> r.change.first().frequencyHz().value()),
            Field.of("quantity", r -> r.difference.quantity().words()),
            Field.of("unit", r -> r.difference.quantity().unit()),
            Field.of("a", r -> r.difference.first().value()),
            Field.of("b", r -> r.difference.second().value()),
            Field.maybe("change_as_measured", r -> r.shown(Difference::asMeasured)),
            Field.maybe("change", r -> r.shown(d -> d.estimate().value())),
            Field.maybe("change_u", r -> r.shown(d -> d.estimate().standardUncertainty())),
            Field.maybe("change_low_95", r -> r.shown(d -> d.interval95().lower())),
            Field.maybe("change_high_95", r -> r.shown(d -> d.interval95().upper())),
            Field.maybe("p", r -> r.shown(Difference::probability)),
            Field.maybe("weight", r -> r.difference.weight()),
            Field.maybe("p_adjusted", r -> r.shown(Difference::adjustedProbability)),
            Field.of("grade", r -> r.difference.grade().words()),
            Field.of("verdict", r -> verdict(r.difference)));

    /**
     * One line for each quantity of each resonance found in both.
     *
     * @param compared both sittings and what was found
     * @return the text of a CSV file; figures of a refused quantity are empty
     */
    public static String csv(CompareSittings.Compared compared) {
        return CsvText.of(
                ROWS, compared.comparison().changes().stream().flatMap(Row::of).toList());
    }

    private static String verdict(Difference difference) {
        return difference.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static List<Map<String, @Nullable Object>> comparability(Comparability comparability) {
        return comparability.checks().stream().map(ComparisonJson::check).toList();
    }

    private static Map<String, @Nullable Object> check(ConditionCheck check) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("condition", check.condition());
        for (Quantity quantity : Quantity.values()) {
            document.put(key(quantity), check.grade(quantity).words());
        }
        document.put("reason", check.reason());
        return document;
    }

    /** The resonance that is 0 dB in both sittings; null where none was found in both. */
    private static @Nullable String levelReference(List<ResonanceChange> changes) {
        return changes.stream()
                .filter(c -> c.levelDb().isEmpty())
                .map(ResonanceChange::called)
                .findFirst()
                .orElse(null);
    }

    private static Map<String, @Nullable Object> change(ResonanceChange change, BenchKnowledge bench) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("name", change.name().orElse(null));
        for (Difference difference : change.differences()) {
            document.put(key(difference.quantity()), difference(change.called(), difference, bench.spread()));
        }
        document.putIfAbsent(key(Quantity.LEVEL), null); // it serves as 0 dB
        return document;
    }

    static Map<String, @Nullable Object> difference(String what, Difference d, SetUpSpread spread) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("unit", d.quantity().unit());
        document.put("verdict", verdict(d));
        document.put("grade", d.grade().words());
        document.put("in_words", InWords.sentence(what, d, spread));
        document.put("a", d.first().value());
        document.put("b", d.second().value());
        document.put("change_as_measured", d.shown() ? d.asMeasured() : null);
        document.put("change", d.shown() ? d.estimate().value() : null);
        document.put("change_u", d.shown() ? d.estimate().standardUncertainty() : null);
        document.put("change_low_95", d.shown() ? d.interval95().lower() : null);
        document.put("change_high_95", d.shown() ? d.interval95().upper() : null);
        document.put("p", d.shown() ? d.probability() : null);
        document.put("weight", d.weight().orElse(null));
        document.put("p_adjusted", d.shown() ? d.adjustedProbability() : null);
        document.put("heard", d.shown() ? d.audibility().words() : null);
        document.put(
                "corrections",
                JsonText.array(
                        CORRECTIONS, d.correction().map(Correction::parts).orElse(List.of())));
        document.put("budget", JsonText.array(budget(d.budget()), d.budget().components()));
        return document;
    }

    private static List<Field<UncertaintyBudget.Component>> budget(UncertaintyBudget budget) {
        return List.of(
                Field.of("part", UncertaintyBudget.Component::name),
                Field.of("u", c -> Math.abs(c.contribution())),
                Field.of("share_of_variance", budget::share));
    }

    private static String key(Quantity quantity) {
        return quantity.name().toLowerCase(Locale.ROOT);
    }

    private static List<Map<String, @Nullable Object>> alone(List<ShownResonance> shown) {
        return JsonText.array(
                ResonanceRow.FIELDS, shown.stream().map(ResonanceRow::of).toList());
    }
}
