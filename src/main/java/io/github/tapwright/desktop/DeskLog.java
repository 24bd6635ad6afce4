package io.github.tapwright.desktop;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;

/** Writes failures of the program itself to a file, for whoever mends it, and to standard error. */
final class DeskLog implements Consumer<Throwable> {

    private final Path file;

    DeskLog(Path archive) {
        this.file = archive.resolve("desk.log");
    }

    @Override
    public void accept(Throwable failure) {
        StringWriter text = new StringWriter();
        failure.printStackTrace(new PrintWriter(text));
        System.err.println(text);
        try {
            Files.writeString(
                    file, text + System.lineSeparator(), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            System.err.println(file + " cannot be written: " + e.getMessage());
        }
    }
}
