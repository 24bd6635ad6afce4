package io.github.tapwright.exchange;

import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.group.Evidence;
import io.github.tapwright.comparison.group.GroupCurve;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.group.GroupWords;
import io.github.tapwright.comparison.group.InstrumentMean;
import io.github.tapwright.comparison.group.MixedDifference;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.statistics.EffectSize;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Summary;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Groups against each other, as JSON and as a CSV table. */
public final class GroupStudyJson {

    static final List<Field<LeftOut>> LEFT_OUT = List.of(
            Field.of("sitting", l -> l.sitting().toString()),
            Field.of("shop_number", l -> l.instrument().text()),
            Field.of("reason", LeftOut::reason));

    static final List<Field<Subject>> SUBJECT = List.of(
            Field.maybe("resonance", s -> s.resonance().map(ModeName::words)),
            Field.of("quantity", s -> s.quantity().name().toLowerCase(Locale.ROOT)),
            Field.of("unit", s -> s.quantity().unit()));

    private static final List<Field<GroupDifference>> DIFFERENCE = Stream.of(
                    Field.within(SUBJECT, GroupDifference::subject),
                    group("first", GroupDifference::first),
                    group("second", GroupDifference::second),
                    evidence())
            .flatMap(List::stream)
            .toList();

    private static final List<Field<InstrumentMean.Part>> FIGURE = List.of(
            Field.of("sitting", f -> f.sitting().toString()),
            Field.of("as_measured", InstrumentMean.Part::measured),
            Field.of("in_common_air", InstrumentMean.Part::corrected));

    private static final List<Field<GroupCurve.BandMean>> BAND = List.of(
            Field.of("band_hz", b -> b.band().nominalHz()),
            Field.of("mean_db", GroupCurve.BandMean::meanDb),
            Field.maybe("low_95_db", b -> b.interval95().map(i -> i.lower())),
            Field.maybe("high_95_db", b -> b.interval95().map(i -> i.upper())));

    private GroupStudyJson() {}

    /**
     * A study of groups.
     *
     * @param study what was found
     * @return an object; figures of a difference are null where either group has too few instruments
     */
    public static String of(GroupStudy study) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("grouped_by", study.settings().by().key());
        document.put("stage", study.settings().stage().key());
        document.put(
                "common_temperature_c", study.air().air().temperatureCelsius().orElse(null));
        document.put(
                "common_relative_humidity_percent",
                study.air().air().relativeHumidityPercent().orElse(null));
        document.put("level_unit", study.levelUnit());
        document.put("questions", study.questions());
        document.put(
                "groups", study.members().stream().map(GroupStudyJson::members).toList());
        document.put(
                "differences",
                study.differences().stream().map(d -> difference(d, study)).toList());
        document.put(
                "curves", study.curves().stream().map(GroupStudyJson::curve).toList());
        document.put("left_out", JsonText.array(LEFT_OUT, study.leftOut()));
        return JsonText.of(document);
    }

    /**
     * One line for each quantity and pair of groups.
     *
     * @param study what was found
     * @return the text of a CSV file
     */
    public static String csv(GroupStudy study) {
        return CsvText.of(DIFFERENCE, study.differences());
    }

    private static Map<String, @Nullable Object> members(GroupStudy.Membership members) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("group", members.group());
        object.put(
                "instruments", members.instruments().stream().map(n -> n.text()).toList());
        object.put(
                "sittings",
                members.sittings().stream().map(s -> s.id().toString()).toList());
        return object;
    }

    private static Map<String, @Nullable Object> difference(GroupDifference d, GroupStudy study) {
        Map<String, @Nullable Object> object = JsonText.object(DIFFERENCE, d);
        object.put("in_words", GroupWords.sentence(d, study.questions()));
        object.put("first_instruments", instruments(d.first()));
        object.put("second_instruments", instruments(d.second()));
        return object;
    }

    private static List<Map<String, @Nullable Object>> instruments(GroupFigures group) {
        return group.instruments().stream().map(GroupStudyJson::instrument).toList();
    }

    private static Map<String, @Nullable Object> instrument(InstrumentMean mean) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("shop_number", mean.instrument().text());
        object.put("mean", mean.value());
        object.put("sittings", JsonText.array(FIGURE, mean.sittings()));
        return object;
    }

    private static Map<String, @Nullable Object> curve(GroupCurve curve) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("group", curve.group());
        object.put("instruments", curve.instruments());
        object.put("bands", JsonText.array(BAND, curve.bands()));
        return object;
    }

    private static List<Field<GroupDifference>> group(String which, Function<GroupDifference, GroupFigures> of) {
        return List.of(
                Field.of(which + "_group", d -> of.apply(d).group()),
                Field.of(which + "_count", d -> of.apply(d).count()),
                Field.of(which + "_mean", d -> of.apply(d).mean()),
                Field.maybe(which + "_s", d -> of.apply(d).summary().map(Summary::standardDeviation)));
    }

    private static List<Field<GroupDifference>> evidence() {
        return List.of(
                known("difference", e -> e.difference().value()),
                known("difference_u", e -> e.difference().standardUncertainty()),
                known("low_95", e -> e.interval95().lower()),
                known("high_95", e -> e.interval95().upper()),
                known("p", Evidence::probability),
                known("p_adjusted", Evidence::adjustedProbability),
                known("differs", Evidence::differs),
                known("p_permutation", e -> e.permutation().probability()),
                effect("hedges_g", EffectSize::value),
                effect("hedges_g_low_95", e -> e.interval95().lower()),
                effect("hedges_g_high_95", e -> e.interval95().upper()),
                mixed("mixed_difference", m -> Optional.of(m.difference().value())),
                mixed("mixed_difference_u", m -> Optional.of(m.difference().standardUncertainty())),
                mixed("mixed_half_width_95", m -> Optional.of(m.difference().halfWidth95())),
                mixed("mixed_per_point_of_humidity", m -> m.perPointOfHumidity().map(Estimate::value)),
                known("worth_seeing", Evidence::worthSeeing),
                Field.maybe(
                        "further_in_each_group",
                        d -> d.evidence()
                                .map(Evidence::furtherInEachGroup)
                                .flatMap(n -> n.isPresent() ? Optional.of(n.getAsInt()) : Optional.empty())));
    }

    private static Field<GroupDifference> known(String name, Function<Evidence, Object> of) {
        return Field.maybe(name, d -> d.evidence().map(of));
    }

    private static Field<GroupDifference> effect(String name, Function<EffectSize, Object> of) {
        return Field.maybe(name, d -> d.evidence().flatMap(Evidence::effectSize).map(of));
    }

    private static Field<GroupDifference> mixed(String name, Function<MixedDifference, Optional<?>> of) {
        return Field.maybe(name, d -> d.evidence().flatMap(Evidence::mixed).flatMap(of));
    }
}
