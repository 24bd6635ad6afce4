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

/** One guitar played again and again, from its recordings on: studied, kept, and what comparisons then rest on. */
class PlayingAgainTest {

    private static final String ASSUMED = "(assumed, not measured on this bench)";
    private static final String MEASURED = "(measured on this bench)";

    @TempDir
    Path folder;

    private ArchiveRun archive;

    @BeforeEach
    void anInstrumentOnTheShelf() {
        archive = ArchiveRun.with("41", folder);
    }

    /** Six notes of the lowest string. */
    private Path notes(String name, double longer) throws IOException {
        double[][] notes = new double[6][];
        for (int fret = 0; fret < notes.length; fret++) {
            notes[fret] = note(PlayedRun.E2 * Math.pow(2, fret / 12.0), longer * (3 - 0.1 * fret), 1, 30 + fret);
        }
        return PlayedRun.write(folder.resolve(name), notes);
    }

    private Path plucks(String name, double gain) throws IOException {
        return PlayedRun.write(
                folder.resolve(name),
                note(110, 3, gain, 1),
                note(110, 3, gain * 1.1, 2),
                note(82.4069, 3, gain, 4),
                note(82.4069, 3, gain * 1.1, 5));
    }

    @Test
    void notesRestOnTheStudyOfNotesAndWhatItLacksIsAssumed() throws IOException {
        archive.addPlayed("41", "notes", notes("1.wav", 1));
        archive.addPlayed("41", "notes", notes("2.wav", 1.04));
        archive.addPlayed("41", "notes", notes("3.wav", 1.1));
        assertThat(archive.run("compare", 1, 3).out())
                .contains("decay times by 5 %", ASSUMED)
                .doesNotContain(MEASURED);

        CommandRun kept = archive.run("repeatability", 1, 2, 3, "--keep", "--csv", folder.resolve("study.csv"));

        assertThat(kept.code()).as(kept.err()).isZero();
        assertThat(kept.out())
                .contains("3 sittings of notes on instrument 41, played anew each time: sittings 1, 2, 3")
                .contains("Fewer than 5 sittings", "early decay", "decay time")
                .contains("Not studied, level LAFmax: gain: unknown / unknown")
                .contains(MEASURED, "levels by 1 dB " + ASSUMED);
        assertThat(kept.err()).contains("kept; comparisons of notes rest on this study from now on");
        assertThat(Files.readAllLines(folder.resolve("study.csv")))
                .hasSize(3)
                .first()
                .asString()
                .startsWith("quantity,figure_unit,mean,strings,figures,scale,s_r,s_l,s_capital_r,");

        JsonNode compared = archive.json("compare", 1, 3);
        JsonNode early = compared.path("changes").path(0).path("playing_again");
        assertThat(early.path("basis").textValue()).isEqualTo("measured on this bench");
        assertThat(early.path("degrees_of_freedom").doubleValue()).isEqualTo(2);
        assertThat(early.path("scale").textValue()).isEqualTo("natural logarithm");
        assertThat(early.path("deviation").doubleValue()).isBetween(0.03, 0.07);
        assertThat(compared.path("changes")
                        .path(2)
                        .path("playing_again")
                        .path("basis")
                        .textValue())
                .isEqualTo("assumed, not measured on this bench");
        assertThat(compared.path("changes").path(3).path("quantity").textValue())
                .isEqualTo("pitch");
        assertThat(compared.path("changes").path(3).path("playing_again").isNull())
                .as("nobody judges a pitch by how far playing moves it")
                .isTrue();
        assertThat(archive.run("compare", 1, 3, "--spread", "0.3:5:1").out())
                .as("what the maker says goes before")
                .contains("(as given)")
                .doesNotContain(MEASURED);
        assertThat(archive.run("verify").code()).isZero();
    }

    @Test
    void everyKindOfStudyHoldsForItsOwn() throws IOException {
        archive.addPlayed("41", "plucks", plucks("1.wav", 0.2), "--gain", "4");
        archive.addPlayed("41", "plucks", plucks("2.wav", 0.22), "--gain", "4");
        archive.addPlayed("41", "plucks", plucks("3.wav", 0.24), "--gain", "4");
        archive.addPlayed("41", "notes", notes("4.wav", 1));
        archive.addPlayed("41", "notes", notes("5.wav", 1.05));
        archive.addPlayed("41", "notes", notes("6.wav", 1.1));

        assertThat(archive.run("repeatability", 1, 2, 3, "--keep").out())
                .contains("3 sittings of plucks on instrument 41", "level LAFmax", "momentary loudness");
        assertThat(archive.run("compare", 1, 2).out()).contains(MEASURED).doesNotContain(ASSUMED);
        assertThat(archive.run("compare", 4, 5).out()).contains(ASSUMED).doesNotContain(MEASURED);
        JsonNode trend = archive.json("trend", "41").path("plucks_spread");
        assertThat(trend.path("basis").textValue()).isEqualTo("measured on this bench");
        assertThat(trend.path("level_db").doubleValue()).isBetween(0.5, 1.2);

        assertThat(archive.run("repeatability", 4, 5, 6, "--keep").code()).isZero();
        assertThat(archive.run("repeatability").out())
                .contains("3 sittings of notes on instrument 41", "3 sittings of plucks on instrument 41");
        JsonNode kept = archive.json("repeatability");
        assertThat(kept.path("set_up_spread").isNull()).as("no study of taps").isTrue();
        assertThat(kept.path("lapsed").isArray()).isTrue();
        assertThat(kept.path("lapsed")).as("both hold").isEmpty();
        assertThat(kept.path("playing").findValuesAsText("procedure")).containsExactly("notes", "plucks");
        assertThat(kept.path("playing")
                        .path(1)
                        .path("quantities")
                        .path(0)
                        .path("counted")
                        .doubleValue())
                .isEqualTo(trend.path("level_db").doubleValue());

        assertThat(archive.run("repeatability", "--forget", "notes").out())
                .contains("the study of notes; repeatability 4 5 6 --keep")
                .doesNotContain("plucks");
        assertThat(archive.json("repeatability").path("playing").findValuesAsText("procedure"))
                .as("the study of plucks holds on")
                .containsExactly("plucks");
        assertThat(archive.run("repeatability", "--forget", "notes").err()).contains("no study of notes is kept");
        assertThat(archive.run("repeatability", "--forget", "4").err())
                .contains("--forget takes taps, notes, plucks or all, not 4");
        assertThat(archive.run("repeatability", 4, 5, 6, "--keep").code()).isZero();

        assertThat(archive.run("repeatability", "--forget").out())
                .contains(
                        "the study of notes; repeatability 4 5 6 --keep",
                        "the study of plucks; repeatability 1 2 3 --keep");
        assertThat(archive.run("repeatability").code())
                .as("one of notes and one of plucks are forgotten together")
                .isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(archive.run("repeatability", 4, 5, 6, "--keep").code()).isZero();
        assertThat(archive.run("repeatability").code())
                .as("what is kept later holds")
                .isZero();
    }

    @Test
    void aStudyWhoseSittingsWereCorrectedHoldsNoLonger() throws IOException {
        archive.addPlayed("41", "plucks", plucks("1.wav", 0.2), "--gain", "4");
        archive.addPlayed("41", "plucks", plucks("2.wav", 0.22), "--gain", "4");
        archive.addPlayed("41", "plucks", plucks("3.wav", 0.24), "--gain", "4");
        assertThat(archive.run("repeatability", 1, 2, 3, "--keep").code()).isZero();
        assertThat(archive.run("sitting", "edit", 3, "--gain", "5").code()).isZero();

        assertThat(archive.run("compare", 1, 2).out())
                .contains("the study of this bench no longer holds, make a new one");
        assertThat(archive.run("repeatability").err())
                .contains("sittings 1 and 3 may not be compared, gain: 4 / 5", "leave one out")
                .hasLineCount(1);
        CommandRun listed = archive.run("repeatability", "--json");
        assertThat(listed.code()).as("none holds").isEqualTo(ExitCode.NOTHING_USABLE);
        JsonNode lapsed = new ObjectMapper().readTree(listed.out()).path("lapsed");
        assertThat(lapsed).hasSize(1);
        assertThat(lapsed.path(0).path("procedure").textValue()).isEqualTo("plucks");
        assertThat(lapsed.path(0).path("reason").textValue())
                .startsWith("sittings 1 and 3 may not be compared, gain: 4 / 5");
    }

    @Test
    void whatMakesNoStudyOfPlayingIsRefusedInOneLine() throws IOException {
        archive.addPlayed("41", "notes", notes("1.wav", 1));
        archive.addPlayed("41", "notes", notes("2.wav", 1.1));
        archive.addPlayed("41", "plucks", plucks("3.wav", 0.2));
        archive.addPlayed("41", "notes", folder.resolve("1.wav"), "--note", "the same again");

        assertThat(archive.run("repeatability", 1, 2).err())
                .contains("needs 3 set-ups at least", "play it and record it anew for each")
                .hasLineCount(1);
        assertThat(archive.run("repeatability", 1, 2, 3).err())
                .contains("sitting 1 is for notes, sitting 3 for plucks; a study takes sittings of one kind")
                .hasLineCount(1);
        assertThat(archive.run("repeatability", 1, 2, 4).err())
                .contains("sittings 1 and 4 hold the same recording")
                .hasLineCount(1);
        assertThat(archive.run("repeatability", 1, 1, 2).err())
                .contains("given twice")
                .hasLineCount(1);
    }
}
