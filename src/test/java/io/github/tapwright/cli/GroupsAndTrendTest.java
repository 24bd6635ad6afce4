package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Six recordings, kept as six instruments in two groups and again as six sittings of one; what is said is invented. */
class GroupsAndTrendTest {

    private static final List<String> SOLID =
            List.of("31-2024-04-09-strung.flac", "32-2024-04-16-strung.flac", "35-2024-07-16-strung.flac");
    private static final List<String> SANDWICH =
            List.of("33-2024-05-14-strung.flac", "34-2024-05-28-strung.flac", "36-2024-09-03-strung.flac");

    @TempDir
    Path folder;

    private ArchiveRun archive;

    private void add(String number, String file, String day) {
        CommandRun run = archive.run(
                "sitting",
                "add",
                number,
                CommandRun.DEMO.resolve(file),
                "--taken",
                day,
                "--stage",
                "strung",
                "--strings",
                "damped",
                "--hole",
                "open",
                "--humidity",
                "45");
        assertThat(run.code()).as(run.err()).isZero();
    }

    @BeforeEach
    void shelf() {
        archive = ArchiveRun.in(folder);
        List<String> all = new ArrayList<>(SOLID);
        all.addAll(SANDWICH);
        for (int i = 0; i < all.size(); i++) {
            String number = "4" + i;
            assertThat(archive.run(
                                    "instrument",
                                    "add",
                                    number,
                                    "--construction",
                                    i < 3 ? "solid" : "honeycomb-sandwich")
                            .code())
                    .isZero();
            add(number, all.get(i), "2025-01-10");
        }
        assertThat(archive.run("instrument", "add", "50").code()).isZero();
        for (int i = 0; i < all.size(); i++) {
            add("50", all.get(i), "2025-0" + (i + 1) + "-10");
        }
    }

    @Test
    void constructionsAreComparedAndTheInstrumentWithoutOneIsLeftOut() throws IOException {
        Path table = folder.resolve("groups.csv");
        Path picture = folder.resolve("groups.svg");
        CommandRun run = archive.run("compare", "--group", "construction", "--csv", table, "--plot", picture);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains(
                        "solid tops: instruments 40, 41, 42",
                        "sitting 7 of 50: the construction of the top",
                        "In words")
                .contains("honeycomb-core sandwich tops (second) less solid tops (first)", "main top, frequency (Hz)")
                .contains("more in each group would show a difference of 1 %");
        assertThat(Files.readString(picture)).contains("honeycomb-core sandwich tops (3 instruments)");
        assertThat(Files.readAllLines(table)).hasSizeGreaterThan(9);

        JsonNode json = new ObjectMapper()
                .readTree(archive.run("compare", "--group", "construction", "--json")
                        .out());
        long decays = json.path("differences").findValuesAsText("quantity").stream()
                .filter("decay_time"::equals)
                .count();
        assertThat(decays).isPositive();
        assertThat(json.path("questions").longValue())
                .as("decay times are Q seen again")
                .isEqualTo(json.path("differences").size() - decays);
        assertThat(json.path("differences").path(0).path("p_adjusted").doubleValue())
                .isBetween(json.path("differences").path(0).path("p").doubleValue(), 1.0);
        assertThat(json.path("left_out").size()).isEqualTo(6);
    }

    @Test
    void theReportOfGroupsHasUnitsAndSaysWhereNothingIsAsked() throws IOException {
        Path report = folder.resolve("groups.html");
        assertThat(archive.run("report", "--group", "construction", "--kind", "workshop", "--out", report)
                        .code())
                .isZero();
        assertThat(Files.readString(report)).contains("main top, frequency (Hz)", "questions asked at once");

        archive.run("instrument", "edit", "41", "--construction", "wood-sandwich");
        archive.run("instrument", "edit", "42", "--construction", "wood-sandwich");
        archive.run("report", "--group", "construction", "--kind", "workshop", "--out", report);
        assertThat(Files.readString(report))
                .contains("No difference is asked about: it takes 3 instruments of each group at least.")
                .doesNotContain("all 0 questions");
    }

    @Test
    void sixSittingsMakeAHistory() throws IOException {
        Path picture = folder.resolve("history.svg");
        Path table = folder.resolve("history.csv");
        CommandRun run = archive.run("trend", "50", "--plot", picture, "--csv", table);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains(
                        "Instrument 50 over time",
                        "from the first sitting on",
                        "in the common air of 45.0 %, ± half the",
                        "main top, frequency (Hz): ",
                        " ± ",
                        "needs a control");
        assertThat(Files.readString(picture))
                .contains("main top", "hollow marks: as measured", "bars: 95 %", "setting up alone");
        assertThat(Files.readAllLines(table))
                .hasSizeGreaterThan(6 * 9)
                .first()
                .asString()
                .contains("in_common_air_half_width_95", "common_temperature_c");

        JsonNode json =
                new ObjectMapper().readTree(archive.run("trend", "50", "--json").out());
        assertThat(json.path("series").path(0).path("figures").size()).isEqualTo(6);
        assertThat(json.path("series")
                        .path(0)
                        .path("drift")
                        .path("measured_p_method")
                        .textValue())
                .isEqualTo("exact");
    }

    @Test
    void whatCannotBeAskedIsRefusedInOneLine() {
        assertThat(archive.run("compare", 1, 2, "--group", "kind").err())
                .contains("--group takes no")
                .hasLineCount(1);
        assertThat(archive.run("compare", 1).err())
                .contains("give the numbers of two sittings")
                .hasLineCount(1);
        assertThat(archive.run("compare", 1, 2, "--stage", "strung").err())
                .contains("--stage goes with --group")
                .hasLineCount(1);
        assertThat(archive.run("compare", "--group", "kind").code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(archive.run("trend", "99").err())
                .contains("no instrument has the shop number 99")
                .hasLineCount(1);
    }
}
