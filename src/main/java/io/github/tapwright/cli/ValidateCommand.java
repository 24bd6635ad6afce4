package io.github.tapwright.cli;

import io.github.tapwright.exchange.ValidationJson;
import io.github.tapwright.validation.BookPage;
import io.github.tapwright.validation.BookResult;
import io.github.tapwright.validation.Chapter;
import io.github.tapwright.validation.Outcome;
import io.github.tapwright.validation.ValidationBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Reruns the validation book. */
@Command(
        name = "validate",
        mixinStandardHelpOptions = true,
        description = "Checks this program against published and derived numbers, each with its source.",
        footer = {
            "",
            "Exit code 1 if any number lies outside its tolerance: then this program, on this machine, is not to be",
            "trusted with what that section calculates. Takes about half a minute."
        })
final class ValidateCommand implements Callable<Integer> {

    private final ValidationBook book;
    private final Terminal terminal;

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Option(names = "--markdown", paramLabel = "FILE", description = "Write the page of docs/validation.md.")
    private Optional<Path> markdown = Optional.empty();

    ValidateCommand(ValidationBook book, Terminal terminal) {
        this.book = book;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        int all = book.sections().size();
        int[] begun = {0};
        BookResult result;
        try {
            result = book.run(title -> terminal.progress().at(title, begun[0]++, all));
        } finally {
            terminal.progress().end();
        }
        if (markdown.isPresent()) {
            Path page = markdown.get();
            Output.to(page, () -> Files.writeString(page, BookPage.of(result)));
        }
        if (json) {
            terminal.print(ValidationJson.of(result));
        } else {
            result.chapters().forEach(this::print);
            terminal.say("%s", result.words());
        }
        return result.isSound() ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private void print(Chapter chapter) {
        terminal.say(
                "%s: %d of %d within tolerance",
                chapter.title(), chapter.within(), chapter.outcomes().size());
        Table table = new Table("expected", "got", "unit", "tolerance", "verdict", "quantity, source");
        for (Outcome o : chapter.outcomes()) {
            table.add(
                    o.expectedText(),
                    o.gotText(),
                    o.check().unit(),
                    o.check().tolerance().words(),
                    o.isWithin() ? "within" : "FAILED",
                    o.check().quantity() + "; " + o.check().source()
                            + (o.failure().isBlank() ? "" : " (" + o.failure() + ")"));
        }
        table.lines().forEach(terminal.out()::println);
        terminal.out().println();
    }
}
