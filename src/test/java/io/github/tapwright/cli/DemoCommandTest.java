package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
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

    @Test
    void aRunOfNotesIsTakenAsSuchAndItsDeadNoteHeldAgainstTheBody() throws IOException {
        Path from = demoWith(s -> List.of("31-2024-10-15-later.flac", "31-2024-10-15-notes.flac")
                .contains(s.path("file").asText()));
        CommandRun run = CommandRun.of("demo", folder.resolve("out"), "--from", from);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("a run of notes", "9 of them notes on the fingerboard")
                .contains("string 4, fret 4 (185.0 Hz)", "near the body's main top");
        assertThat(folder.resolve("out/pictures/instrument-31.png")).isNotEmptyFile();
    }

    @Test
    void anUnknownProcedureIsRefusedBeforeAnythingIsWritten() throws IOException {
        Path from = twoSittings();
        Path description = from.resolve("workshop.json");
        String good = Files.readString(description);
        Files.writeString(description, good.replace("\"stage\"", "\"procedure\":\"song\",\"stage\""));
        CommandRun run = CommandRun.of("demo", folder.resolve("out"), "--from", from);

        assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run.err()).contains("'song'").hasLineCount(1);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aMistypedWordInTheWorkshopIsRefusedAndNotTakenForUnknown() throws IOException {
        Path from = twoSittings();
        Path description = from.resolve("workshop.json");
        String good = Files.readString(description);

        Files.writeString(description, good.replace("\"open\"", "\"opne\""));
        CommandRun hole = CommandRun.of("demo", folder.resolve("a"), "--from", from);
        assertThat(hole.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(hole.err()).contains("'opne' is no hole", "correct it there").hasLineCount(1);

        Files.writeString(description, good.substring(0, good.length() - 5));
        CommandRun broken = CommandRun.of("demo", folder.resolve("b"), "--from", from);
        assertThat(broken.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(broken.err()).contains("is no JSON", "correct it there").hasLineCount(1);
    }

    /** The demo cut down to the first two sittings of instrument 36, so that the test is short. */
    private Path twoSittings() throws IOException {
        int[] taken = {0};
        return demoWith(s -> s.path("instrument").asText().equals("36") && taken[0]++ < 2);
    }

    private Path demoWith(Predicate<JsonNode> wanted) throws IOException {
        Path from = Files.createDirectories(folder.resolve("from"));
        ObjectMapper json = new ObjectMapper();
        ObjectNode workshop = (ObjectNode) json.readTree(Files.readString(CommandRun.DEMO.resolve("workshop.json")));
        ArrayNode sittings = json.createArrayNode();
        workshop.withArray("sittings").forEach(s -> {
            if (wanted.test(s)) {
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
