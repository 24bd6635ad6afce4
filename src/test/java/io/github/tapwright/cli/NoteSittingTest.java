package io.github.tapwright.cli;

import static io.github.tapwright.cli.PlayedRun.note;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sittings that hold a run of notes or plucks: kept, shown, analysed again, exported. */
class NoteSittingTest {

    @TempDir
    Path folder;

    private ArchiveRun archive;

    @BeforeEach
    void anInstrumentOnTheShelf() {
        archive = ArchiveRun.with("41", folder);
    }

    private static JsonNode json(CommandRun run) throws IOException {
        assertThat(run.err()).isEmpty();
        return new ObjectMapper().readTree(run.out());
    }

    private void addThreeNotes() throws IOException {
        addRun(PlayedRun.write(
                folder.resolve("run.wav"), note(110, 3, 1, 1), note(116.5409, 3, 1, 2), note(123.4708, 3, 1, 3)));
    }

    private Path addRun(Path file) {
        archive.addPlayed("41", "notes", file);
        return file;
    }

    @Test
    void aKeptRunIsTheRunThatWasHeard() throws IOException {
        Path file = addRun(PlayedRun.stringWithADeadFret(folder.resolve("run.wav")));

        JsonNode kept = json(archive.run("sitting", "show", 1, "--json"))
                .path("analyses")
                .path(0);
        JsonNode heard = json(CommandRun.of("fingerboard", file, "--json"));

        assertThat(kept.path("fast_decays")).isEqualTo(heard.path("fast_decays"));
        assertThat(kept.path("notes").size()).isEqualTo(PlayedRun.NOTES);
        assertThat(kept.path("notes").path(3).path("partials"))
                .isEqualTo(heard.path("notes").path(3).path("partials"));
        assertThat(kept.path("notes").path(3).path("pitch_hz"))
                .isEqualTo(heard.path("notes").path(3).path("pitch_hz"));
        assertThat(archive.run("sitting", "reanalyse", 1).out()).contains("every figure is the same, nothing added");
        assertThat(archive.run("verify").code()).isZero();
    }

    @Test
    void aRunIsShownWithTheResonancesOfTapsOnTheSameInstrument() throws IOException {
        Path taps = CommandRun.DEMO.resolve("31-2024-04-09-strung.flac");
        assertThat(archive.run("sitting", "add", "41", taps).code()).isZero();
        addRun(PlayedRun.stringWithADeadFret(folder.resolve("run.wav")));

        CommandRun shown = archive.run("sitting", "show", 2, "--plot", folder.resolve("maps.svg"));

        assertThat(shown.out())
                .contains(
                        "string 6, fret 6 (116.5 Hz)", "Resonances are those of the taps of sitting 1", "strings free");
        assertThat(Files.readString(folder.resolve("maps.svg"))).contains("<svg");
        assertThat(archive.run("sitting", "list").out()).containsPattern("2 +41 .* notes");
    }

    @Test
    void whatIsOfAnotherProcedureIsRefusedInOneLine() throws IOException {
        addThreeNotes();
        Path taps = CommandRun.DEMO.resolve("31-2024-04-09-strung.flac");
        assertThat(archive.run("sitting", "add", "41", taps).code()).isZero();

        assertThat(archive.run("compare", 1, 2).err())
                .contains("sitting 1 is for notes")
                .hasLineCount(1);
        assertThat(archive.run("sitting", "reanalyse", 1, "--band", "80:400").err())
                .contains("a band of frequencies is for taps only")
                .hasLineCount(1);
        assertThat(archive.run("sitting", "name", 1, "100", "main air").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(archive.run("sitting", "add", "41", taps, "--procedure", "songs")
                        .err())
                .contains("for taps, notes or plucks, not for 'songs'")
                .hasLineCount(1);
        assertThat(archive.run("sitting", "add", "41", taps, "--procedure", "notes", "--band", "80:400")
                        .err())
                .contains("--band is for taps")
                .hasLineCount(1);
    }

    @Test
    void plucksAreKeptWithTheCalibrationTheyRestOn() throws IOException {
        Path tone = SoundFile.sine(folder.resolve("tone.wav"), 1000, -20);
        assertThat(archive.run("calibration", "add", tone, "--level", "94").code())
                .isZero();
        Path plucks = PlayedRun.write(folder.resolve("plucks.wav"), note(110, 3, 0.4, 1), note(110, 3, 0.4, 2));

        CommandRun added =
                archive.run("sitting", "add", "41", plucks, "--procedure", "plucks", "--calibrated-by", 1, "--json");

        JsonNode found = json(added).path("analyses").path(0);
        assertThat(found.path("plucks").size()).isEqualTo(2);
        assertThat(found.path("plucks").path(0).path("string").intValue()).isEqualTo(5);
        assertThat(found.path("plucks").path(0).path("loudness_sone_max").doubleValue())
                .isPositive();
        assertThat(archive.run("sitting", "show", 1).out()).contains("dB re 20 µPa by calibration 1");
        assertThat(archive.run("sitting", "reanalyse", 1).out()).contains("nothing added");
        assertThat(archive.run("verify").code()).isZero();
    }

    @Test
    void notesPartialsAndPlucksAreExportedAsTables() throws IOException {
        addThreeNotes();
        Path plucks = PlayedRun.write(folder.resolve("plucks.wav"), note(110, 3, 0.4, 1), note(110, 3, 0.4, 2));
        assertThat(archive.run("sitting", "add", "41", plucks, "--procedure", "plucks")
                        .code())
                .isZero();

        assertThat(archive.run("export", folder.resolve("out")).code()).isZero();

        assertThat(Files.readAllLines(folder.resolve("out/notes.csv")))
                .hasSize(4)
                .element(1)
                .asString()
                .startsWith("1,41,\"fingerboard-2, level-2\",run.wav,note-5,1,");
        assertThat(Files.readAllLines(folder.resolve("out/partials.csv"))).hasSizeGreaterThan(30);
        assertThat(Files.readAllLines(folder.resolve("out/plucks.csv"))).hasSize(3);
        assertThat(Files.readAllLines(folder.resolve("out/resonances.csv"))).hasSize(1);
    }
}
