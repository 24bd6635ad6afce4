package io.github.tapwright.archive;

import java.time.Instant;

/**
 * A program that writes a recording, as it is noted beside it: a number alone could be another's by now.
 *
 * @param text process number and start of the process
 */
record Writer(String text) {

    /** This program. */
    static Writer self() {
        return of(ProcessHandle.current());
    }

    private static Writer of(ProcessHandle process) {
        String start = process.info().startInstant().map(Instant::toString).orElse("unknown");
        return new Writer(process.pid() + " " + start);
    }
}
