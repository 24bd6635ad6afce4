package io.github.tapwright.report;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.report.xhtml.Markup;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;

/** Writes a report in the form its file's name asks for. */
final class ReportFile {

    private ReportFile() {}

    static void requireKnownEnding(Path file) {
        if (!isPdf(file) && !ending(file).endsWith(".html")) {
            throw new RefusedEntryException(file + ": a report's file name must end in .pdf or .html");
        }
    }

    static void write(Report report, Path file) throws IOException {
        byte[] bytes = isPdf(file)
                ? PdfPage.of(report)
                : Markup.document(Template.forScreen(report)).getBytes(StandardCharsets.UTF_8);
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static boolean isPdf(Path file) {
        return ending(file).endsWith(".pdf");
    }

    private static String ending(Path file) {
        return file.toString().toLowerCase(Locale.ROOT);
    }
}
