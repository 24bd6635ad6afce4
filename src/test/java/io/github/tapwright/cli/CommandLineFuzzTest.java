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
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Any words after the program's name: understood or refused. Nothing is carried out. */
class CommandLineFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(ParameterException.class);

    @FuzzTest
    void isUnderstoodOrRefused(byte[] bytes) {
        String[] words = Arrays.stream(TypedText.of(bytes).split("\n", -1))
                .filter(word -> !word.startsWith("@")) // would read that file
                .toArray(String[]::new);
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        CommandLine line = Commands.of(
                new Bench(Clock.systemUTC(), Path.of(".")), new Terminal(nowhere, nowhere, Progress.SILENT));
        BOUNDS.hold(bytes.length, () -> line.parseArgs(words));
    }
}
