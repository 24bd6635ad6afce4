package io.github.tapwright.cli;

/** What the program says to scripts when it ends. */
final class ExitCode {

    /** Done. */
    static final int DONE = 0;

    /** Done, but nothing usable was found; the output says why. */
    static final int NOTHING_USABLE = 1;

    /** The command was not understood, or asks for something that cannot be. */
    static final int WRONG_USE = 2;

    /** A recording cannot be read. */
    static final int UNREADABLE = 3;

    /** The archive or a backup is in trouble. */
    static final int ARCHIVE = 4;

    /** The program itself is at fault (EX_SOFTWARE of BSD's sysexits, from memory, to be verified). */
    static final int PROGRAM = 70;

    private ExitCode() {}
}
