package io.github.tapwright.cli;

import io.github.tapwright.sitting.Progress;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;

/**
 * What the program did with one command line: the real commands on real files.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record CommandRun(int code, String out, String err) {

    static final Path DEMO = Path.of("recordings-demo");

    static CommandRun of(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out, true), new PrintWriter(err, true), Progress.SILENT);
        Bench bench = new Bench(() -> Clock.fixed(Instant.parse("2026-03-14T09:26:53Z"), ZoneOffset.UTC), Path.of("."));
        String[] line = Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
        InputStream keyboard = System.in;
        // Nobody sits before a test, and whoever runs it may need the real input for itself.
        System.setIn(InputStream.nullInputStream());
        try {
            int code = Commands.of(bench, terminal, line).execute(line);
            return new CommandRun(code, out.toString(), err.toString());
        } finally {
            System.setIn(keyboard);
        }
    }
}
