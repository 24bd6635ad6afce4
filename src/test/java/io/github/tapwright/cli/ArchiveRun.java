package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * Command lines on one real archive.
 *
 * @param archive its folder, made by the first command that keeps something
 */
record ArchiveRun(Path archive) {

    /** An archive in a folder of a test. */
    static ArchiveRun in(Path folder) {
        return new ArchiveRun(folder.resolve("archive"));
    }

    /** The same with one instrument on its shelf. */
    static ArchiveRun with(String instrument, Path folder) {
        ArchiveRun made = in(folder);
        made.done("instrument", "add", instrument);
        return made;
    }

    /** Another archive in a folder of a test, the same as this one is now. */
    ArchiveRun copiedTo(Path folder) throws IOException {
        ArchiveRun copy = in(folder);
        try (Stream<Path> files = Files.walk(archive)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.archive.resolve(archive.relativize(file).toString()));
            }
        }
        return copy;
    }

    CommandRun run(Object... arguments) {
        return CommandRun.of(Stream.concat(Stream.of(arguments), Stream.of("--archive", archive))
                .toArray());
    }

    /** One that must succeed. */
    CommandRun done(Object... arguments) {
        CommandRun run = run(arguments);
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    /** The document of one that must succeed. */
    JsonNode json(Object... arguments) throws IOException {
        return new ObjectMapper()
                .readTree(done(Stream.concat(Stream.of(arguments), Stream.of("--json"))
                                .toArray())
                        .out());
    }

    /** A sitting of what was played, strings free. */
    void addPlayed(String instrument, String procedure, Path file, Object... more) {
        Stream<Object> command =
                Stream.of("sitting", "add", instrument, file, "--procedure", procedure, "--strings", "free");
        done(Stream.concat(command, Stream.of(more)).toArray());
    }
}
