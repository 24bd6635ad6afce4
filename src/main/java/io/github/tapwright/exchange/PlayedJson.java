package io.github.tapwright.exchange;

import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.played.AtPlace;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.played.FastNote;
import io.github.tapwright.comparison.played.OnString;
import io.github.tapwright.comparison.played.PlayedChange;
import io.github.tapwright.comparison.played.PlayedComparison;
import io.github.tapwright.comparison.played.PlayedWords;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Interval;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The JSON and CSV of two sittings of notes or plucks. */
public final class PlayedJson {

    private static final List<Field<FastNote>> FAST = List.of(
            Field.of("string", f -> f.place().string()),
            Field.of("fret", f -> f.place().fret()),
            Field.of("a", f -> key(f.first())),
            Field.of("b", f -> key(f.second())),
            Field.of("in_words", FastNote::words));

    private static final List<Field<AtPlace>> PLACES = List.of(
            Field.of("string", p -> p.place().string()),
            Field.of("fret", p -> p.place().fret()),
            Field.of("a", AtPlace::first),
            Field.of("b", AtPlace::second),
            Field.of("change", AtPlace::difference));

    private static final List<Field<PlayedChange>> AGAIN = List.of(
            Field.of("deviation", c -> c.again().deviation()),
            Field.of("scale", c -> c.quantity().scale()),
            Field.of("degrees_of_freedom", c -> c.again().degreesOfFreedom()),
            Field.of("basis", c -> c.again().basis().words()));

    private PlayedJson() {}

    /** One string of one quantity, or all of them. */
    private record Row(PlayedChange change, Optional<OnString> string) {

        static Stream<Row> of(PlayedChange change) {
            return Stream.concat(
                    change.strings().stream().map(s -> new Row(change, Optional.of(s))),
                    change.overall().stream().map(all -> new Row(change, Optional.empty())));
        }

        private Optional<Estimate> estimate() {
            Optional<Estimate> difference =
                    string.isPresent() ? string.flatMap(OnString::difference) : change.estimate();
            return difference.filter(d -> change.shown());
        }

        Optional<Double> value() {
            return estimate().map(e -> change.quantity().inUnit(e.value()));
        }

        Optional<Interval> interval() {
            return estimate().map(e -> PlayedWords.interval(change.quantity(), e));
        }

        /** A verdict is of all strings together. */
        <T> Optional<T> overall(T figure) {
            return string.isPresent() || !change.shown() ? Optional.empty() : Optional.of(figure);
        }
    }

    private static final List<Field<Row>> STRINGS = List.of(
            Field.maybe("string", r -> r.string().map(OnString::string)),
            Field.maybe("a_count", r -> r.string().map(OnString::firstCount)),
            Field.maybe("b_count", r -> r.string().map(OnString::secondCount)),
            Field.maybe("a", r -> r.string().map(OnString::first)),
            Field.maybe("b", r -> r.string().map(OnString::second)),
            Field.maybe("change", Row::value),
            Field.maybe("change_low_95", r -> r.interval().map(Interval::lower)),
            Field.maybe("change_high_95", r -> r.interval().map(Interval::upper)));

    private static final List<Field<Row>> ROWS = Stream.of(
                    List.<Field<Row>>of(
                            Field.of("quantity", r -> r.change().quantity().words()),
                            Field.of("figure_unit", r -> r.change().quantity().figureUnit()),
                            Field.of("change_unit", r -> r.change().quantity().unit())),
                    STRINGS,
                    List.<Field<Row>>of(
                            Field.maybe("p", r -> r.overall(r.change().probability())),
                            Field.maybe("p_adjusted", r -> r.overall(r.change().adjustedProbability())),
                            Field.of("grade", r -> r.change().grade().words()),
                            Field.maybe(
                                    "verdict",
                                    r -> r.string().isPresent() ? Optional.empty() : Optional.of(verdict(r.change())))))
            .flatMap(List::stream)
            .toList();

    /**
     * A comparison.
     *
     * @param compared both sittings and what was found
     * @param passedOver later sittings set aside, where the latest of an instrument was asked for
     * @return an object; figures of a refused quantity are null
     */
    public static String of(ComparePlayed.Compared compared, List<LeftOut> passedOver) {
        PlayedComparison comparison = compared.comparison();
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("a", JsonText.object(SittingFields.ALL, compared.first()));
        document.put("b", JsonText.object(SittingFields.ALL, compared.second()));
        document.put("method_version_a", compared.first().latest().methodVersion());
        document.put("method_version_b", compared.second().latest().methodVersion());
        document.put("comparability", ComparisonJson.comparability(comparison.comparability()));
        document.put("despite", comparison.comparability().despite().orElse(null));
        document.put("questions", comparison.questions());
        document.put(
                "changes", comparison.changes().stream().map(PlayedJson::change).toList());
        document.put("fast_notes", JsonText.array(FAST, comparison.fastNotes()));
        document.put("left_out", JsonText.array(GroupStudyJson.LEFT_OUT, passedOver));
        return JsonText.of(document);
    }

    /**
     * One line for each string of each quantity, and one over all strings, where the string is empty.
     *
     * @param compared both sittings and what was found
     * @return the text of a CSV file; figures of a refused quantity are empty
     */
    public static String csv(ComparePlayed.Compared compared) {
        return CsvText.of(
                ROWS, compared.comparison().changes().stream().flatMap(Row::of).toList());
    }

    private static Map<String, @Nullable Object> change(PlayedChange change) {
        Row overall = new Row(change, Optional.empty());
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("quantity", change.quantity().words());
        document.put("unit", change.quantity().unit());
        document.put("verdict", verdict(change));
        document.put("grade", change.grade().words());
        document.put("in_words", PlayedWords.sentence(change));
        document.put("change", overall.value().orElse(null));
        document.put("change_low_95", overall.interval().map(Interval::lower).orElse(null));
        document.put("change_high_95", overall.interval().map(Interval::upper).orElse(null));
        document.put("p", overall.estimate().map(e -> change.probability()).orElse(null));
        document.put(
                "p_adjusted",
                overall.estimate().map(e -> change.adjustedProbability()).orElse(null));
        document.put("playing_again", change.isJudged() ? JsonText.object(AGAIN, change) : null);
        document.put(
                "strings",
                JsonText.array(
                        STRINGS,
                        change.strings().stream()
                                .map(s -> new Row(change, Optional.of(s)))
                                .toList()));
        document.put("places", change.shown() ? JsonText.array(PLACES, change.places()) : List.of());
        return document;
    }

    private static String verdict(PlayedChange change) {
        return change.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String key(FastNote.Fate fate) {
        return fate.name().toLowerCase(Locale.ROOT);
    }
}
