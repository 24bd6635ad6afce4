package io.github.tapwright.cli;

import io.github.tapwright.sitting.Progress;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;

/**
 * The program's entry.
 *
 * <p>The launcher tells where the program lies ({@code tapwright.home}) and whether a person watches standard
 * error ({@code tapwright.terminal}), which newer Java versions no longer let a program ask for.
 */
public final class Tapwright {

    private Tapwright() {}

    /**
     * Starts the program.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        PrintWriter out = utf8(System.out);
        PrintWriter err = utf8(System.err);
        Progress progress =
                Boolean.getBoolean("tapwright.terminal") ? new PatientProgress(err, System::nanoTime) : Progress.SILENT;
        Path home = Path.of(System.getProperty("tapwright.home", "."));
        Bench bench = new Bench(() -> Clock.system(ZoneId.systemDefault()), home);
        System.exit(Commands.of(bench, new Terminal(out, err, progress), args).execute(args));
    }

    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }
}
