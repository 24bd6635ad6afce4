package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.validation.Check;
import io.github.tapwright.validation.Section;
import io.github.tapwright.validation.Tolerance;
import io.github.tapwright.validation.ValidationBook;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The command, on books of one check; the shipped book has its own test. */
class ValidateCommandTest {

    @TempDir
    Path folder;

    private static CommandRun run(double expected, String... arguments) {
        Section section = new Section() {
            @Override
            public String title() {
                return "Sums";
            }

            @Override
            public String about() {
                return "One and one.";
            }

            @Override
            public List<Check> checks() {
                return List.of(new Check(
                        "a sum",
                        expected,
                        "Hz",
                        "derived",
                        new Tolerance(0.5, Double.POSITIVE_INFINITY, "because"),
                        () -> 2));
            }
        };
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out, true), new PrintWriter(err, true), Progress.SILENT);
        int code =
                new CommandLine(new ValidateCommand(new ValidationBook(List.of(section)), terminal)).execute(arguments);
        return new CommandRun(code, out.toString(), err.toString());
    }

    @Test
    void aSoundBookEndsWithHowManyAndExitCodeNought() {
        CommandRun run = run(2);
        assertThat(run.code()).isZero();
        assertThat(run.out().lines()).first().isEqualTo("Sums: 1 of 1 within tolerance");
        assertThat(run.out().lines()).last().isEqualTo("1 of 1 within tolerance");
    }

    @Test
    void aWrongValueMakesItFail() {
        CommandRun run = run(3);
        assertThat(run.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(run.out()).contains("FAILED").endsWith("0 of 1 within tolerance" + System.lineSeparator());
    }

    @Test
    void jsonIsOneDocumentAndThePageIsWritten() throws IOException {
        Path page = folder.resolve("page.md");
        CommandRun run = run(3, "--json", "--markdown", page.toString());
        JsonNode document = new ObjectMapper().readTree(run.out());
        assertThat(run.code()).isEqualTo(1);
        assertThat(document.required("sound").asBoolean()).isFalse();
        JsonNode check = document.required("sections").get(0).required("checks").get(0);
        assertThat(check.required("got").asDouble()).isEqualTo(2);
        assertThat(check.required("allowed_above").isNull()).isTrue();
        assertThat(check.required("source").asText()).isEqualTo("derived");
        assertThat(Files.readString(page)).contains("## Sums", "**FAILED**");
    }
}
