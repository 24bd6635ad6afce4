package io.github.tapwright.exchange;

import io.github.tapwright.validation.BookResult;
import io.github.tapwright.validation.Chapter;
import io.github.tapwright.validation.Outcome;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What came of the validation book as JSON. */
public final class ValidationJson {

    private static final List<Field<Outcome>> FIELDS = List.of(
            Field.of("quantity", o -> o.check().quantity()),
            Field.of("expected", o -> o.check().expected()),
            Field.maybe("got", Outcome::got),
            Field.of("unit", o -> o.check().unit()),
            Field.maybe("allowed_below", o -> finite(o.check().tolerance().below())),
            Field.maybe("allowed_above", o -> finite(o.check().tolerance().above())),
            Field.of("within", Outcome::isWithin),
            Field.of("source", o -> o.check().source()),
            Field.of("tolerance_reason", o -> o.check().tolerance().reason()),
            Field.maybe("failure", o -> Optional.of(o.failure()).filter(f -> !f.isBlank())));

    private ValidationJson() {}

    /**
     * The whole book.
     *
     * @param result what came of it
     * @return one document; an allowance without bound is null
     */
    public static String of(BookResult result) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("checks", result.checks());
        document.put("within", result.within());
        document.put("sound", result.isSound());
        document.put(
                "sections",
                result.chapters().stream().map(ValidationJson::chapter).toList());
        return JsonText.of(document);
    }

    private static Map<String, @Nullable Object> chapter(Chapter chapter) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("title", chapter.title());
        object.put("about", chapter.about());
        object.put("checks", JsonText.array(FIELDS, chapter.outcomes()));
        return object;
    }

    private static Optional<Double> finite(double bound) {
        return Double.isFinite(bound) ? Optional.of(bound) : Optional.empty();
    }
}
