package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever has the JSON of a comparison can work out every adjusted probability by the rule of docs/methods/comparison.md. */
class RecomputedProbabilitiesTest {

    @TempDir
    static Path folder;

    private static JsonNode comparison;

    private static CommandRun done(Object... arguments) {
        CommandRun run =
                CommandRun.of(Stream.concat(Stream.of(arguments), Stream.of("--archive", folder.resolve("archive")))
                        .toArray());
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    @BeforeAll
    static void compareTwoSittings() throws IOException {
        done("instrument", "add", "33");
        done("sitting", "add", "33", CommandRun.DEMO.resolve("33-2024-05-14-strung.flac"), "--taken", "2024-05-14");
        done("sitting", "add", "33", CommandRun.DEMO.resolve("33-2024-12-03-later.flac"), "--taken", "2024-12-03");
        comparison = new ObjectMapper()
                .readTree(done("compare", "1", "2", "--csv", folder.resolve("c.csv"), "--json")
                        .out());
    }

    private static List<JsonNode> questions() {
        List<JsonNode> asked = new ArrayList<>();
        for (JsonNode change : comparison.path("changes")) {
            Stream.of("frequency", "q", "level")
                    .map(change::path)
                    .filter(d -> d.path("weight").isNumber())
                    .forEach(asked::add);
        }
        return asked;
    }

    private static double share(JsonNode question) {
        return question.path("p").doubleValue() / question.path("weight").doubleValue();
    }

    /** Of every question at or before this one in order of p/w: the weights from there on, times p/w; the largest counts. */
    private static double adjusted(JsonNode question, List<JsonNode> all) {
        return all.stream()
                .filter(q -> share(q) <= share(question))
                .mapToDouble(q -> share(q)
                        * all.stream()
                                .filter(later -> share(later) >= share(q))
                                .mapToDouble(later -> later.path("weight").doubleValue())
                                .sum())
                .map(p -> Math.min(1, p))
                .max()
                .orElseThrow();
    }

    @Test
    void everyAdjustedProbabilityFollowsFromThoseAskedAloneAndTheirWeights() {
        List<JsonNode> questions = questions();

        assertThat(questions).hasSize(comparison.path("questions").intValue()).hasSizeGreaterThan(8);
        assertThat(questions)
                .allSatisfy(q -> assertThat(q.path("p_adjusted").doubleValue())
                        .isCloseTo(adjusted(q, questions), within(1e-12)));
        assertThat(questions.stream()
                        .map(q -> q.path("p_adjusted").doubleValue())
                        .filter(p -> p > 0 && p < 1))
                .as("some are neither certain nor hopeless")
                .isNotEmpty();
        assertThat(questions.stream()
                        .mapToDouble(q -> q.path("weight").doubleValue())
                        .sum())
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void decayTimeIsNoQuestionAndNoSurerThanQ() {
        assertThat(comparison.path("changes")).allSatisfy(change -> {
            JsonNode decay = change.path("decay_time");
            assertThat(decay.path("weight").isNull()).isTrue();
            assertThat(decay.path("p_adjusted").doubleValue())
                    .isEqualTo(Math.max(
                            decay.path("p").doubleValue(),
                            change.path("q").path("p_adjusted").doubleValue()));
        });
    }

    @Test
    void theTableHoldsTheSameWeights() throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("c.csv"));
        int column = List.of(lines.get(0).split(",", -1)).indexOf("weight");

        assertThat(lines.stream()
                        .skip(1)
                        .map(l -> l.split(",", -1)[column])
                        .filter(w -> !w.isEmpty())
                        .map(Double::valueOf))
                .isEqualTo(questions().stream()
                        .map(q -> q.path("weight").doubleValue())
                        .toList());
    }
}
