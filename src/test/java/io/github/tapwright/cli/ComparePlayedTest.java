package io.github.tapwright.cli;

import static io.github.tapwright.cli.PlayedRun.note;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two sittings of notes, and two of plucks, compared from their recordings on. */
class ComparePlayedTest {

    @TempDir
    Path folder;

    private ArchiveRun archive;

    @BeforeEach
    void twoInstrumentsOnTheShelf() {
        archive = ArchiveRun.with("41", folder);
        archive.done("instrument", "add", "42");
    }

    /** The same string without the dead fret, every note ringing half as long again. */
    private Path longerString() throws IOException {
        double[][] notes = new double[PlayedRun.NOTES][];
        for (int fret = 0; fret < notes.length; fret++) {
            notes[fret] = note(PlayedRun.E2 * Math.pow(2, fret / 12.0), 1.5 * (4 - 0.1 * fret), 1, 20 + fret);
        }
        return PlayedRun.write(folder.resolve("longer.wav"), notes);
    }

    @Test
    void oneRunTwiceIsKnownToATenthAndAnUnknownGainNamesTheRemedy() throws IOException {
        archive.addPlayed("41", "notes", PlayedRun.stringWithADeadFret(folder.resolve("dead.wav")));
        archive.addPlayed("42", "notes", folder.resolve("dead.wav"));

        assertThat(archive.run(
                                "compare",
                                1,
                                2,
                                "--csv",
                                folder.resolve("c.csv"),
                                "--despite",
                                "one run, kept twice on purpose")
                        .out())
                .contains("gain, refused: unknown / unknown", "write the gain down with sitting edit")
                .contains("Means of decay times are geometric");
        assertThat(Files.readAllLines(folder.resolve("c.csv")))
                .element(1)
                .asString()
                .startsWith("early decay,s,%,6,")
                .contains(",0.0,-0.1,0.1,");
    }

    @Test
    void aStringThatRingsLongerIsFoundAndTheDeadNoteIsSeenToBeGone() throws IOException {
        archive.addPlayed("41", "notes", PlayedRun.stringWithADeadFret(folder.resolve("dead.wav")), "--gain", "4");
        archive.addPlayed("42", "notes", longerString(), "--gain", "5");

        CommandRun shown =
                archive.run("compare", 1, 2, "--plot", folder.resolve("maps.svg"), "--csv", folder.resolve("c.csv"));

        assertThat(shown.code()).as(shown.err()).isZero();
        assertThat(shown.out())
                .contains("A: sitting 1 of instrument 41", "pluck, shown with this warning", "age of the strings")
                .contains("gain, refused: 4 / 5", "the level LAFmax: not compared, the conditions forbid it")
                .contains("string 6, fret 6: died away fast in A, rings as its neighbours do in B")
                .containsPattern("the early decay of notes is \\d+ % longer");
        assertThat(Files.readString(folder.resolve("maps.svg"))).contains("Two runs of notes, B minus A");
        assertThat(Files.readAllLines(folder.resolve("c.csv")))
                .element(0)
                .asString()
                .startsWith(
                        "quantity,figure_unit,change_unit,string,a_count,b_count,a,b,change,change_low_95,change_high_95,p,p_adjusted");

        JsonNode json = new ObjectMapper()
                .readTree(archive.run("compare", 1, 2, "--json").out());
        JsonNode early = json.path("changes").path(0);
        assertThat(early.path("verdict").textValue()).isEqualTo("differs");
        assertThat(early.path("change_low_95").doubleValue()).isLessThan(50);
        assertThat(early.path("change_high_95").doubleValue()).isGreaterThan(50);
        assertThat(early.path("places").size()).isEqualTo(PlayedRun.NOTES);
        assertThat(json.path("changes").path(2).path("change").isNull())
                .as("refused")
                .isTrue();
        assertThat(json.path("fast_notes").path(0).path("b").textValue()).isEqualTo("rings");
    }

    @Test
    void plucksTwiceAsLoudAreSixDecibelsUp() throws IOException {
        archive.addPlayed("41", "plucks", plucks("soft.wav", 0.2), "--gain", "4");
        archive.addPlayed("42", "plucks", plucks("loud.wav", 0.4), "--gain", "4");

        JsonNode json = new ObjectMapper()
                .readTree(archive.run("compare", 1, 2, "--json").out());

        JsonNode level = json.path("changes").path(0);
        assertThat(level.path("quantity").textValue()).isEqualTo("level LAFmax");
        assertThat(level.path("change").doubleValue()).isCloseTo(6.02, within(0.3));
        assertThat(level.path("verdict").textValue()).isEqualTo("differs");
        assertThat(archive.run("compare", 1, 2, "--plot", folder.resolve("no.svg"))
                        .err())
                .contains("no picture written, because no note was played at the same place in both");
    }

    @Test
    void levelsOfACalibratedSittingDoNotStandBesideThoseOfAnother() throws IOException {
        Path tone = SoundFile.sine(folder.resolve("tone.wav"), 1000, -20);
        assertThat(archive.run("calibration", "add", tone, "--level", "94").code())
                .isZero();
        archive.addPlayed("41", "plucks", plucks("soft.wav", 0.2), "--gain", "4");
        archive.addPlayed("42", "plucks", plucks("loud.wav", 0.4), "--gain", "4", "--calibrated-by", 1);

        CommandRun compared = archive.run("compare", 1, 2);

        assertThat(compared.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(compared.out()).contains("levels re 20 µPa and levels re full scale cannot stand side by side");
    }

    private Path plucks(String name, double gain) throws IOException {
        return PlayedRun.write(
                folder.resolve(name),
                note(110, 3, gain, 1),
                note(110, 3, gain, 2),
                note(110, 3, gain, 3),
                note(82.4069, 3, gain, 4),
                note(82.4069, 3, gain, 5),
                note(82.4069, 3, gain, 6));
    }
}
