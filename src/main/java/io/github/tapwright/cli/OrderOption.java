package io.github.tapwright.cli;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.note.run.PlayingOrder;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How a run of notes was played. */
final class OrderOption {

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            description = "Run of notes: string-by-string or lowest-fret; string-by-string if left out.")
    private Optional<String> order = Optional.empty();

    boolean isGiven() {
        return order.isPresent();
    }

    PlayingOrder order() {
        return switch (order.orElse("string-by-string")) {
            case "string-by-string" -> PlayingOrder.STRING_BY_STRING;
            case "lowest-fret" -> PlayingOrder.LOWEST_FRET;
            default ->
                throw new RefusedEntryException(
                        "the order is string-by-string or lowest-fret, not '" + order.orElseThrow() + "'");
        };
    }
}
