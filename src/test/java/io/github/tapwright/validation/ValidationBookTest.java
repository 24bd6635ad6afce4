package io.github.tapwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ValidationBookTest {

    private static final Path PAGE = Path.of("docs", "validation.md");
    private static final Pattern KEY = Pattern.compile("\\[([^]]+)]");
    private static final int GOT = 3; // of the cells between the bars, the first being empty

    /** One run for all questions about the shipped book, because it takes half a minute. */
    @Test
    void theShippedBookIsSoundAndTheCommittedPageSaysWhatItSays() throws IOException {
        List<String> begun = new ArrayList<>();

        BookResult result = ValidationBook.shipped().run(begun::add);

        assertThat(result.chapters())
                .flatExtracting(Chapter::outcomes)
                .filteredOn(o -> !o.isWithin())
                .isEmpty();
        assertThat(result.isSound()).isTrue();
        assertThat(begun).hasSize(result.chapters().size()).doesNotHaveDuplicates();
        assertThat(rows(Files.readString(PAGE)))
                .as("make the page again with tapwright validate --markdown docs/validation.md")
                .isEqualTo(rows(BookPage.of(result)));
        assertThat(result.chapters())
                .allSatisfy(c -> assertThat(c.outcomes())
                        .extracting(o -> o.check().quantity())
                        .as(c.title())
                        .doesNotHaveDuplicates());
        everySourceIsKnown(result);
    }

    /** A source is a key of the references, a derivation, or says that it is from memory or from nobody. */
    private static void everySourceIsKnown(BookResult result) throws IOException {
        String references = Files.readString(Path.of("docs", "references.bib"));
        for (Chapter chapter : result.chapters()) {
            for (Outcome outcome : chapter.outcomes()) {
                String source = outcome.check().source();
                assertThat(source).matches(".*(\\[.+]|derived|common practice, no source).*");
                assertThat(KEY.matcher(source).results().map(r -> r.group(1)))
                        .as(source)
                        .allSatisfy(key -> assertThat(references).contains("{" + key + ","));
            }
        }
    }

    /** All but the numbers got, whose last digits another machine may round differently. */
    private static List<String> rows(String page) {
        return page.lines()
                .map(line -> {
                    List<String> cells = new ArrayList<>(Arrays.asList(line.split("\\|", -1)));
                    if (line.startsWith("|")) {
                        cells.set(GOT, " ");
                    }
                    return String.join("|", cells);
                })
                .toList();
    }

    @Test
    void aWrongExpectationFailsAndSoDoesAComputationThatGivesNothing() {
        Tolerance half = Tolerance.within(0.5, "half a unit");
        Section section = new Invented(List.of(
                new Check("a sum", 2, "", "derived", half, () -> 1 + 1),
                new Check("a wrong sum", 3, "", "derived", half, () -> 1 + 1),
                new Check("no sum", 2, "", "derived", half, () -> {
                    throw new IllegalStateException("nothing to add");
                }),
                new Check("no number", 2, "", "derived", half, () -> Double.NaN)));

        BookResult result = new ValidationBook(List.of(section)).run(title -> {});

        assertThat(result.isSound()).isFalse();
        assertThat(result.words()).isEqualTo("1 of 4 within tolerance");
        assertThat(result.chapters().get(0).outcomes())
                .extracting(Outcome::isWithin)
                .containsExactly(true, false, false, false);
        assertThat(result.chapters().get(0).outcomes().get(2).failure()).isEqualTo("nothing to add");
        assertThat(BookPage.of(result)).contains("| a wrong sum | 3 | 2.00 |  | ± 0.5 | **FAILED** | derived |");
    }

    @Test
    void aSectionThatCannotBeMadeFailsAndTheOthersStillRun() {
        Section broken = new Invented(List.of()) {
            @Override
            public List<Check> checks() {
                throw new IllegalArgumentException("a table is missing");
            }
        };
        Section sound =
                new Invented(List.of(new Check("a sum", 2, "", "derived", Tolerance.within(0, "exact"), () -> 2)));

        BookResult result = new ValidationBook(List.of(broken, sound)).run(title -> {});

        assertThat(result.words()).isEqualTo("1 of 2 within tolerance");
        assertThat(result.chapters().get(0).outcomes().get(0).failure()).isEqualTo("a table is missing");
        assertThat(new ValidationBook(List.of()).run(title -> {}).isSound()).isFalse();
    }

    @Test
    void boundsCountAsWithinAndHaveWords() {
        assertThat(new Tolerance(0.4, 0.2, "printed").allows(1, 0.6)).isTrue();
        assertThat(new Tolerance(0.4, 0.2, "printed").allows(1, 1.21)).isFalse();
        assertThat(Tolerance.atLeast("a limit").allows(60, 59.9)).isFalse();
        assertThat(Tolerance.atLeast("a limit").allows(60, 90)).isTrue();
        assertThat(List.of(
                                Tolerance.atLeast("x"),
                                Tolerance.within(0, "x"),
                                Tolerance.within(0.1, "x"),
                                new Tolerance(0.4, 0.2, "x"))
                        .stream()
                        .map(Tolerance::words))
                .containsExactly("at least", "exact", "± 0.1", "+0.2 −0.4");
    }

    private static class Invented implements Section {

        private final List<Check> checks;

        Invented(List<Check> checks) {
            this.checks = checks;
        }

        @Override
        public String title() {
            return "Invented";
        }

        @Override
        public String about() {
            return "For the tests.";
        }

        @Override
        public List<Check> checks() {
            return checks;
        }
    }
}
