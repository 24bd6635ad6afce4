package io.github.tapwright.cli;

import io.github.tapwright.archive.ArchiveException;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/** Turns every failure into one line on standard error and an exit code. */
final class Complaints implements IExecutionExceptionHandler, IParameterExceptionHandler {

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        return complain(failure, command.getErr());
    }

    /** Writes one line about a failure; gives the exit code. */
    static int complain(Exception failure, PrintWriter err) {
        if (failure instanceof UnreadableRecordingException) {
            return complain(err, message(failure), ExitCode.UNREADABLE);
        }
        if (failure instanceof ArchiveException) {
            return complain(err, message(failure), ExitCode.ARCHIVE);
        }
        if (failure instanceof RefusedEntryException || failure instanceof TypeConversionException) {
            return complain(err, message(failure), ExitCode.WRONG_USE);
        }
        if (failure instanceof UncheckedIOException unchecked) {
            return complain(err, cannotWrite(unchecked), ExitCode.WRONG_USE);
        }
        if (failure instanceof IOException io) {
            return complain(err, cannotWrite(io), ExitCode.WRONG_USE);
        }
        failure.printStackTrace(err);
        return complain(err, "the program itself failed, see above; please report it", ExitCode.PROGRAM);
    }

    @Override
    public int handleParseException(ParameterException failure, String[] args) {
        String name = failure.getCommandLine().getCommandSpec().qualifiedName();
        String hint = "; see " + name + " --help";
        return complain(failure.getCommandLine().getErr(), failure.getMessage() + hint, ExitCode.WRONG_USE);
    }

    private static int complain(PrintWriter err, String message, int code) {
        err.println("tapwright: " + message);
        err.flush();
        return code;
    }

    private static String message(Exception failure) {
        return String.valueOf(failure.getMessage());
    }

    private static String cannotWrite(Exception failure) {
        Throwable cause = failure instanceof UncheckedIOException ? failure.getCause() : failure;
        String where = cause instanceof FileSystemException f ? String.valueOf(f.getFile()) : message(failure);
        String why = cause instanceof FileSystemException f && f.getReason() != null ? f.getReason() : message(failure);
        return why.contains("No space left") || why.contains("not enough space")
                ? where + " cannot be written, the disk is full; free some space and try again"
                : where + " cannot be written; check that its folder exists and may be written to";
    }
}
