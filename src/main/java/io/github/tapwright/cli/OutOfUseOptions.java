package io.github.tapwright.cli;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** Taking something out of use with a reason, or back. */
final class OutOfUseOptions {

    @Option(names = "--because", paramLabel = "REASON", description = "What is wrong with it.")
    private Optional<String> reason = Optional.empty();

    @Option(names = "--take-back", description = "Use it again.")
    private boolean takeBack;

    /** Does the one that was asked for; the thing is named in the refusal of both and of neither. */
    <T> T apply(String thing, Function<String, T> outOfUse, Supplier<T> back) {
        Given.refuse(
                reason.isPresent() == takeBack,
                "say what is wrong with --because \"REASON\", or use the " + thing + " again with --take-back");
        return reason.map(outOfUse).orElseGet(back);
    }
}
