package io.github.tapwright.cli;

import io.github.tapwright.instrument.RefusedEntryException;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** What was typed after a command, so that nothing of it is left aside in silence. */
final class Given {

    private Given() {}

    /** Refuses what has no meaning here; the words name the remedy. */
    static void refuse(boolean misplaced, String words) {
        if (misplaced) {
            throw new RefusedEntryException(words);
        }
    }

    /** Refuses everything that was given beside what an option goes with; where the archive lies may always be said. */
    static void onlyBeside(CommandSpec command, String option, Set<String> goesWith) {
        ParseResult given = command.commandLine().getParseResult();
        Stream.concat(
                        given.matchedPositionals().stream().map(p -> p.paramLabel()),
                        given.matchedOptions().stream().map(o -> o.longestName()))
                .filter(name -> !name.equals(option) && !name.equals("--archive") && !goesWith.contains(name))
                .findFirst()
                .ifPresent(name -> {
                    throw new RefusedEntryException(name + " does not go with " + option + "; leave one of them out");
                });
    }
}
