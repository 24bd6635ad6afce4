package io.github.tapwright.exchange;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.trend.Drift;
import io.github.tapwright.comparison.trend.Event;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.HumidityRegression;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.comparison.trend.TrendWords;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.statistics.Estimate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** An instrument over time, as JSON and as a CSV table. */
public final class HistoryJson {

    private static final List<Field<Event>> EVENT = List.of(
            Field.of("at", e -> e.at().toString()),
            Field.of("day", e -> e.day().toString()),
            Field.of("what", Event::what));

    private static final List<Field<Drift>> DRIFT = Stream.of(
                    line("measured", Drift::measured),
                    line("corrected", Drift::corrected),
                    List.<Field<Drift>>of(
                            regression("regression_per_month", r -> r.perMonth().value()),
                            regression(
                                    "regression_per_month_u", r -> r.perMonth().standardUncertainty()),
                            regression(
                                    "regression_per_month_half_width_95",
                                    r -> r.perMonth().halfWidth95()),
                            regression(
                                    "regression_per_point_of_humidity",
                                    r -> r.perPoint().value()),
                            Field.of("months", Drift::months),
                            Field.of("in_all", Drift::inAll),
                            Field.of("set_up_limit_95", Drift::setUpLimit),
                            Field.of("exceeds_setting_up", Drift::exceedsSettingUp),
                            Field.of("humidity_limit_95", Drift::humidityLimit),
                            Field.of("humidity_may_explain", Drift::humidityMayExplain),
                            Field.of("p_adjusted", Drift::adjustedProbability),
                            Field.of("drifts", Drift::drifts)))
            .flatMap(List::stream)
            .toList();

    /** A figure of a sitting, and what it would have been in the common air. */
    private record Row(Subject subject, SittingFigure figure, Estimate corrected, boolean inStretch, Air air) {

        static List<Row> of(Series series, History history) {
            return series.figures().stream()
                    .map(f -> new Row(
                            series.subject(),
                            f,
                            f.inCommonAir(series.subject(), history.bench()),
                            series.stretch().contains(f),
                            history.air().air()))
                    .toList();
        }
    }

    private static final List<Field<Row>> FIGURE = List.of(
            Field.of("sitting", r -> r.figure().sitting().toString()),
            Field.of("taken_at", r -> r.figure().takenAt().instant().toString()),
            Field.of("as_measured", r -> r.figure().measured()),
            Field.of("as_measured_u", r -> r.figure().found().standardUncertainty()),
            Field.of("in_common_air", r -> r.corrected().value()),
            Field.of("in_common_air_u", r -> r.corrected().standardUncertainty()),
            Field.of("in_common_air_half_width_95", r -> r.corrected().halfWidth95()),
            Field.maybe("relative_humidity_percent", r -> r.figure().humidityPercent()));

    private static final List<Field<Row>> ROW = Stream.of(
                    Field.within(GroupStudyJson.SUBJECT, Row::subject),
                    FIGURE,
                    List.<Field<Row>>of(
                            Field.of("in_stretch", Row::inStretch),
                            Field.maybe(
                                    "common_relative_humidity_percent",
                                    r -> r.air().relativeHumidityPercent()),
                            Field.maybe("common_temperature_c", r -> r.air().temperatureCelsius())))
            .flatMap(List::stream)
            .toList();

    private HistoryJson() {}

    /**
     * A history.
     *
     * @param history what was found
     * @return an object; "drift" of a series is null where there are too few days, "plucks_spread" where there are no plucks
     */
    public static String of(History history) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("shop_number", history.instrument().text());
        document.put("stretch", TrendWords.stretch(history));
        document.put("events", JsonText.array(EVENT, history.events()));
        document.put(
                "common_temperature_c", history.air().air().temperatureCelsius().orElse(null));
        document.put(
                "common_relative_humidity_percent",
                history.air().air().relativeHumidityPercent().orElse(null));
        document.put(
                "set_up_spread",
                JsonText.object(ComparisonJson.SPREAD, history.bench().spread()));
        document.put(
                "plucks_spread",
                history.hasPlucks()
                        ? JsonText.object(
                                ComparisonJson.SCATTER, history.bench().plucks())
                        : null);
        document.put("humidity_sensitivity", SensitivityJson.of(history.bench().sensitivities()));
        document.put("level_unit", history.levelUnit());
        document.put("questions", history.questions());
        document.put(
                "series", history.series().stream().map(s -> series(s, history)).toList());
        document.put("warnings", history.warnings());
        document.put("caution", TrendWords.CAUTION);
        document.put("left_out", JsonText.array(GroupStudyJson.LEFT_OUT, history.leftOut()));
        return JsonText.of(document);
    }

    /**
     * One line for each figure of each sitting.
     *
     * @param history what was found
     * @return the text of a CSV file
     */
    public static String csv(History history) {
        return CsvText.of(
                ROW,
                history.series().stream()
                        .flatMap(s -> Row.of(s, history).stream())
                        .toList());
    }

    private static Map<String, @Nullable Object> series(Series series, History history) {
        Map<String, @Nullable Object> object = JsonText.object(GroupStudyJson.SUBJECT, series.subject());
        object.put("in_words", TrendWords.sentence(series, history));
        object.put("sittings_in_stretch", series.inStretch());
        object.put("days_in_stretch", series.daysInStretch());
        object.put("drift", series.drift().map(d -> JsonText.object(DRIFT, d)).orElse(null));
        object.put("figures", JsonText.array(FIGURE, Row.of(series, history)));
        return object;
    }

    private static List<Field<Drift>> line(String which, Function<Drift, Drift.Line> of) {
        return List.of(
                Field.of(which + "_slope_per_month", d -> of.apply(d).slope().slope()),
                Field.maybe(
                        which + "_slope_low_95",
                        d -> of.apply(d).slope().interval().map(i -> i.lower())),
                Field.maybe(
                        which + "_slope_high_95",
                        d -> of.apply(d).slope().interval().map(i -> i.upper())),
                Field.of(which + "_p", d -> of.apply(d).test().probability()),
                Field.of(
                        which + "_p_method",
                        d -> of.apply(d).test().method().name().toLowerCase(Locale.ROOT)));
    }

    private static Field<Drift> regression(String name, Function<HumidityRegression, Object> of) {
        return Field.maybe(name, d -> d.regression().flatMap(r -> Optional.of(of.apply(r))));
    }
}
