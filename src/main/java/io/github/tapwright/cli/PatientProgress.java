package io.github.tapwright.cli;

import io.github.tapwright.sitting.Progress;
import java.io.PrintWriter;
import java.util.function.LongSupplier;

/** Shows progress on one line that is written over, and only once a task has taken two seconds. */
final class PatientProgress implements Progress {

    private static final long PATIENCE_NANOSECONDS = 2_000_000_000L;
    private static final String BACK_TO_AN_EMPTY_LINE = "\r\u001b[K";

    private final PrintWriter err;
    private final LongSupplier nanoseconds;
    private final long start;

    PatientProgress(PrintWriter err, LongSupplier nanoseconds) {
        this.err = err;
        this.nanoseconds = nanoseconds;
        this.start = nanoseconds.getAsLong();
    }

    @Override
    public void at(String step, int done, int total) {
        if (nanoseconds.getAsLong() - start < PATIENCE_NANOSECONDS) {
            return;
        }
        err.print(BACK_TO_AN_EMPTY_LINE + (done < total ? step + " (" + done + " of " + total + " done)" : ""));
        err.flush();
    }
}
