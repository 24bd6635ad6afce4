package io.github.tapwright.cli;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.fuzz.TypedText;
import io.github.tapwright.sitting.Progress;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Any words after the program's name: understood or refused. Nothing is carried out. */
class CommandLineFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(ParameterException.class));

    private static final CommandLine LINE = line();

    private static CommandLine line() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Bench bench = new Bench(Clock::systemUTC, Path.of("."));
        return Commands.of(bench, new Terminal(nowhere, nowhere, Progress.SILENT));
    }

    @FuzzTest
    void isUnderstoodOrRefused(byte[] bytes) {
        String[] words = Arrays.stream(TypedText.of(bytes).split("\n", -1))
                .filter(word -> !word.startsWith("@")) // would read that file
                .toArray(String[]::new);
        BOUNDS.hold(bytes.length, () -> LINE.parseArgs(words));
    }
}
