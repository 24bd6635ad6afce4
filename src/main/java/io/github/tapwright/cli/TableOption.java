package io.github.tapwright.cli;

import io.github.tapwright.instrument.RefusedEntryException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** A table written beside what is printed. */
final class TableOption {

    @Option(names = "--csv", paramLabel = "OUT", description = "Write the figures as a .csv table.")
    private Optional<Path> file = Optional.empty();

    /** A slip in the order of names must not write a table over a recording. */
    void refuseUnlessTable() {
        file.filter(f -> !f.toString().toLowerCase(Locale.ROOT).endsWith(".csv"))
                .ifPresent(f -> {
                    throw new RefusedEntryException(f + ": a table's file name must end in .csv");
                });
    }

    boolean isAsked() {
        return file.isPresent();
    }

    void write(Supplier<String> table, Terminal terminal) {
        if (file.isPresent()) {
            Path to = file.get();
            Output.to(to, () -> Files.writeString(to, table.get(), StandardCharsets.UTF_8));
            terminal.note("wrote " + to);
        }
    }
}
