package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command line the documentation shows is run, in order, as a reader would. */
class DocumentedCommandsTest {

    private static final Pattern LINE = Pattern.compile("^(?:\\$ )?\\./tapwright (.+)$");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final List<String> OF_AN_ARCHIVE = List.of(
            "instrument",
            "sitting",
            "compare",
            "repeatability",
            "model",
            "export",
            "verify",
            "backup",
            "level",
            "calibration",
            "trend",
            "report",
            "shop");
    /** Run for half a minute and have tests of their own. */
    private static final List<String> TESTED_ELSEWHERE = List.of("demo", "validate");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "README.md",
                "docs/guide/first-week.md",
                "docs/guide/how-loud.md",
                "docs/guide/notes-and-fingerboard.md",
                "docs/guide/body-model.md",
                "docs/guide/reports.md",
                "docs/guide/putting-a-slip-right.md",
                "docs/guide/really-different.md"
            })
    void everyCommandDoesWhatItSays(String document) throws IOException {
        SoundFile.sine(folder.resolve("calibrator.wav"), 1000, -20);
        PlayedRun.write(folder.resolve("neck.wav"), neck(3));
        PlayedRun.write(folder.resolve("neck-again.wav"), neck(2.9));
        PlayedRun.write(folder.resolve("neck-2.wav"), neck(3.1));
        PlayedRun.write(folder.resolve("neck-3.wav"), neck(2.95));
        for (String name : List.of("a2", "ours", "theirs")) {
            WavWriter.write(
                    folder.resolve(name + ".wav"),
                    StringNote.plain(110, 1e-5, 2, 3).recording(44_100, Chance.seeded(name.hashCode())),
                    WavSamples.INT_24);
        }
        List<String> commands = commands(Path.of(document));
        assertThat(commands).hasSizeGreaterThan(3);
        for (String command : commands) {
            CommandRun run = CommandRun.of(arguments(command).toArray());
            assertThat(run.code()).as("%s: %s%s", command, run.out(), run.err()).isZero();
        }
    }

    @Test
    void whatTheReadMeShowsIsWhatIsPrinted() throws IOException {
        boolean isShown = false; // the two commands on top are not
        String printed = "";
        int compared = 0;
        for (String line : codeLines(Path.of("README.md"))) {
            Matcher matcher = LINE.matcher(line);
            if (matcher.matches()) {
                isShown = line.startsWith("$");
                printed = isShown
                        ? CommandRun.of(arguments(matcher.group(1)).toArray()).out()
                        : "";
            } else if (isShown && !line.isBlank() && !line.strip().equals("…")) {
                compared++;
                String shown = line.endsWith("…") ? line.substring(0, line.length() - 1) : line + "\n";
                assertThat("\n" + printed).as("README.md shows “%s”", line).contains("\n" + shown);
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    private static List<String> codeLines(Path document) throws IOException {
        List<String> lines = new ArrayList<>();
        boolean code = false;
        for (String line : Files.readAllLines(document)) {
            code ^= line.startsWith("```");
            if (code && !line.startsWith("```")) {
                lines.add(line);
            }
        }
        return lines;
    }

    private static List<String> commands(Path document) throws IOException {
        return codeLines(document).stream()
                .map(LINE::matcher)
                .filter(Matcher::matches)
                .map(matcher -> matcher.group(1))
                .filter(command -> !TESTED_ELSEWHERE.contains(command))
                .toList();
    }

    /** The words of a line; what it writes, and the calibrator's tone it reads, lie in a folder of the test. */
    private List<String> arguments(String command) {
        List<String> words = new ArrayList<>();
        WORD.matcher(command).results().forEach(m -> words.add(m.group(1) == null ? m.group(2) : m.group(1)));
        words.replaceAll(this::inFolder);
        if (OF_AN_ARCHIVE.contains(words.get(0))) {
            words.add("--archive");
            words.add(folder.resolve("archive").toString());
        }
        return words;
    }

    private String inFolder(String word) {
        boolean written = word.matches(
                        ".*\\.(svg|png|zip|csv|pdf|html)|(calibrator|a2|neck|neck-again|neck-2|neck-3|ours|theirs)\\.wav.*")
                || List.of("restored", "tables").contains(word);
        return written ? folder.resolve(word).toString() : word;
    }

    private static double[][] neck(double decaySeconds) {
        return IntStream.rangeClosed(0, 4)
                .mapToObj(fret -> PlayedRun.note(110 * Math.pow(2, fret / 12.0), decaySeconds, 1, fret))
                .toArray(double[][]::new);
    }
}
