package io.github.tapwright.validation;

import java.util.stream.Collectors;

/** The book as a page of Markdown, without anything that differs from one run to the next. */
public final class BookPage {

    private BookPage() {}

    /**
     * Writes the page.
     *
     * @param result what came of the book
     * @return Markdown, one table for each section
     */
    public static String of(BookResult result) {
        return """
                # Validation book

                Made by `tapwright validate --markdown docs/validation.md`; do not edit it by hand. Every number under "got" is worked
                out anew by the shipped program whenever the command runs. Keys in brackets are those of
                [references.bib](references.bib); what is derived comes from the programs in [validation](../validation/README.md) or
                from the formula named.

                **%s.**

                """.formatted(result.words())
                + result.chapters().stream().map(BookPage::chapter).collect(Collectors.joining("\n"));
    }

    private static String chapter(Chapter chapter) {
        return "## " + chapter.title() + "\n\n" + chapter.about() + "\n\n"
                + "| quantity | expected | got | unit | tolerance | verdict | source | why this tolerance |\n"
                + "|---|---|---|---|---|---|---|---|\n"
                + chapter.outcomes().stream().map(BookPage::row).collect(Collectors.joining());
    }

    private static String row(Outcome outcome) {
        Check check = outcome.check();
        return "| " + check.quantity() + " | " + outcome.expectedText() + " | " + outcome.gotText() + " | "
                + check.unit()
                + " | " + check.tolerance().words() + " | " + (outcome.isWithin() ? "within" : "**FAILED**") + " | "
                + check.source() + " | " + check.tolerance().reason() + " |\n";
    }
}
