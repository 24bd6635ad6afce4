package io.github.tapwright.cli;

import io.github.tapwright.archive.ArchiveException;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

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
        if (failure instanceof RefusedEntryException
                || failure instanceof TypeConversionException
                || failure instanceof Output.UnwritableException) {
            return complain(err, message(failure), ExitCode.WRONG_USE);
        }
        failure.printStackTrace(err);
        return complain(err, "the program itself failed, see above; please report it", ExitCode.PROGRAM);
    }

    @Override
    public int handleParseException(ParameterException failure, String[] args) {
        String name = failure.getCommandLine().getCommandSpec().qualifiedName();
        String hint = "; see " + name + " --help";
        PrintWriter err = failure.getCommandLine().getErr();
        return complain(err, words(failure) + hint, ExitCode.WRONG_USE);
    }

    /** What cannot be understood, with what may have been meant. */
    private static String words(ParameterException failure) {
        String message = String.valueOf(failure.getMessage());
        if (!(failure instanceof UnmatchedArgumentException unmatched)) {
            return message;
        }
        List<String> words = unmatched.getUnmatched();
        if (unmatched.isUnknownOption() && words.size() > 1) {
            message = "Unknown option: '" + words.get(0) + "'";
        }
        List<String> suggestions = unmatched.getSuggestions();
        return suggestions.isEmpty() ? message : message + "; did you mean " + String.join(" or ", suggestions) + "?";
    }

    private static int complain(PrintWriter err, String message, int code) {
        err.println("tapwright: " + message);
        err.flush();
        return code;
    }

    private static String message(Exception failure) {
        return String.valueOf(failure.getMessage());
    }
}
