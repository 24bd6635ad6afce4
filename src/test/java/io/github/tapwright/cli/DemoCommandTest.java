package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {

    @TempDir
    Path folder;

    @Test
    void theDemoBuildsAnArchiveTellsWhatItFoundAndSaysThatAllIsInvented() throws IOException {
        CommandRun run = CommandRun.of("demo", folder.resolve("out"), "--from", twoSittings());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("INVENTED DATA").contains("Instrument 36 (invented)", "main air", "main top");
        assertThat(run.out()).contains("rejected: cut off");
        assertThat(folder.resolve("out/pictures/instrument-36.png")).isNotEmptyFile();
        CommandRun verified = CommandRun.of("verify", "--archive", folder.resolve("out/archive"));
        assertThat(verified.out()).contains("2 sittings, 2 originals");
    }

    @Test
    void aFolderInUseIsLeftAlone() throws IOException {
        Files.writeString(folder.resolve("letter.txt"), "keep me");
        CommandRun run = CommandRun.of("demo", folder);

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains("not empty").hasLineCount(1);
        assertThat(folder).isDirectoryContaining(p -> p.endsWith("letter.txt"));
    }

    /** The demo cut down to the first two sittings of instrument 36, so that the test is short. */
    private Path twoSittings() throws IOException {
        Path from = Files.createDirectories(folder.resolve("from"));
        ObjectMapper json = new ObjectMapper();
        ObjectNode workshop = (ObjectNode) json.readTree(Files.readString(CommandRun.DEMO.resolve("workshop.json")));
        ArrayNode sittings = json.createArrayNode();
        workshop.withArray("sittings").forEach(s -> {
            if (s.path("instrument").asText().equals("36") && sittings.size() < 2) {
                sittings.add(s);
            }
        });
        workshop.set("sittings", sittings);
        Files.writeString(from.resolve("workshop.json"), workshop.toString());
        for (var sitting : sittings) {
            String file = sitting.path("file").asText();
            Files.copy(CommandRun.DEMO.resolve(file), from.resolve(file));
        }
        return from;
    }
}
