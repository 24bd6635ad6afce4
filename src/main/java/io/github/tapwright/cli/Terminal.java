package io.github.tapwright.cli;

import io.github.tapwright.sitting.Progress;
import java.io.PrintWriter;
import java.util.Locale;

/**
 * Where a command writes to.
 *
 * @param out results
 * @param err diagnostics
 * @param progress how far a long task has come
 */
record Terminal(PrintWriter out, PrintWriter err, Progress progress) {

    /** A line of results, figures with a decimal point wherever the program runs. */
    void say(String format, Object... arguments) {
        out.println(String.format(Locale.ROOT, format, arguments));
    }

    /** A whole document, as it is. */
    void print(String document) {
        out.print(document);
        out.flush();
    }

    /** A line for the person in front of the screen. */
    void note(String text) {
        err.println("tapwright: " + text);
        err.flush();
    }

    /** Whether a person watches standard error. */
    boolean isWatched() {
        return progress != Progress.SILENT;
    }
}
