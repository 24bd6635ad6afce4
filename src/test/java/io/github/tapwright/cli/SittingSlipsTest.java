package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sitting kept under the wrong guitar is moved, one that should not have been kept is set aside; nothing is lost. */
class SittingSlipsTest {

    private static final String WRONG = "a neighbour's guitar";

    @TempDir
    static Path made;

    @TempDir
    Path folder;

    private ArchiveRun bench;

    /** Sittings 1 and 3 of guitar 33; sitting 2 says so too, but is of guitar 34; sitting 4 of guitar 31. */
    @BeforeAll
    static void fill() {
        ArchiveRun bench = ArchiveRun.with("33", made);
        bench.done("instrument", "edit", "33", "--construction", "honeycomb-sandwich");
        bench.done("instrument", "add", "34", "--construction", "honeycomb-sandwich");
        bench.done("instrument", "add", "31", "--construction", "solid");
        tapped(bench, "33", "33-2024-05-14-strung", "2024-05-14", "strung", "open");
        tapped(bench, "33", "34-2024-05-28-strung", "2025-05-28", "later", "open");
        tapped(bench, "33", "33-2024-12-03-later", "2024-12-03", "later", "open");
        tapped(bench, "31", "31-2024-04-09-strung", "2024-04-09", "strung", "open");
    }

    private static void tapped(
            ArchiveRun bench, String instrument, String file, String day, String stage, String hole) {
        String command = "sitting add " + instrument + " " + CommandRun.DEMO.resolve(file + ".flac") + " --taken " + day
                + " --stage " + stage + " --hole " + hole + " --strings damped --humidity 45 --temperature 20 --gain 4";
        bench.done((Object[]) command.split(" "));
    }

    @BeforeEach
    void copy() throws IOException {
        bench = ArchiveRun.in(made).copiedTo(folder);
    }

    @Test
    void aSittingIsMovedToTheGuitarItWasReallyOfWithAllItHas() throws IOException {
        bench.done("sitting", "name", "2", "--number", "1", "the lowest");
        JsonNode before = bench.json("sitting", "show", "2");

        String moved = bench.done("sitting", "edit", "2", "--instrument", "34").out();

        assertThat(moved)
                .startsWith("Sitting 2 of instrument 34, 2025-05-28")
                .contains("before a correction: instrument 33; later;")
                .doesNotContain("analysed");
        JsonNode after = bench.json("sitting", "show", "2");
        assertThat(after.path("shop_number").asText()).isEqualTo("34");
        assertThat(after.path("before_corrections").get(0).path("shop_number").asText())
                .isEqualTo("33");
        for (String same : List.of("recordings", "analyses", "names_given", "stage", "gain", "taken_at")) {
            assertThat(after.path(same)).as(same).isEqualTo(before.path(same));
        }
        assertThat(bench.done("trend", "33").out()).doesNotContain("2025-05-28");
        assertThat(bench.done("trend", "34").out()).contains("2025-05-28");
        assertThat(bench.done("sitting", "show", "2").out()).contains("before a correction: instrument 33;");
        assertThat(bench.done("verify").out()).contains("Everything is as it should be.");
    }

    @Test
    void whereASittingCameFromIsSaidByTheNumberThatGuitarHasNow() {
        bench.done("sitting", "edit", "2", "--instrument", "34");
        bench.done("instrument", "edit", "33", "--shop-number", "133");

        assertThat(bench.done("sitting", "edit", "2", "--instrument", "133").out())
                .startsWith("Sitting 2 of instrument 133")
                .contains("before a correction: instrument 34;");
    }

    @Test
    void aSittingIsNotMovedToAGuitarThatIsNotOnTheShelf() {
        CommandRun refused = bench.run("sitting", "edit", "2", "--instrument", "99", "--humidity", "50");

        assertThat(refused.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(refused.err())
                .contains("no instrument has the shop number 99")
                .hasLineCount(1);
        assertThat(bench.done("sitting", "show", "2").out())
                .contains("of instrument 33", "humidity 45 %")
                .doesNotContain("before a correction");
    }

    @Test
    void aSittingSetAsideIsLeftOutOfHistoriesAndGroupsWhichSayWhy() throws IOException {
        assertThat(bench.done("trend", "33").out()).contains("2025-05-28");

        assertThat(setAside().out()).contains("Sitting 2 of instrument 33, 2025-05-28, is set aside: " + WRONG);

        String leftOut = "left out: set aside: " + WRONG;
        assertThat(bench.done("trend", "33").out())
                .contains("sitting 2 " + leftOut)
                .doesNotContain("2025-05-28");
        assertThat(bench.json("trend", "33").path("left_out").findValuesAsText("reason"))
                .contains("set aside: " + WRONG);
        assertThat(bench.done("compare", "--group", "construction").out())
                .contains("sitting 2 of 33: set aside: " + WRONG);
        Path report = folder.resolve("trend.html");
        bench.done("report", "--trend", "33", "--out", report);
        assertThat(Files.readString(report).contains("sitting 2 left out: set aside: a neighbour"))
                .isTrue();
    }

    @Test
    void whoeverNamesASittingSetAsideIsRefusedWithTheReasonAndTheRemedy() {
        setAside();

        for (String command : List.of(
                "compare 1 2",
                "compare 2 1 --despite curious",
                "repeatability 1 2 3",
                "model 2",
                "report 2 --out " + folder.resolve("r.pdf"),
                "report 1 --against 2 --out " + folder.resolve("r.pdf"))) {
            CommandRun run = bench.run((Object[]) command.split(" "));
            assertThat(run.code()).as(command).isEqualTo(ExitCode.WRONG_USE);
            assertThat(run.err())
                    .as(command)
                    .contains(
                            "sitting 2 is set aside (" + WRONG + ")",
                            "take it back with sitting set-aside 2 --take-back")
                    .hasLineCount(1);
        }
    }

    @Test
    void theLatestSittingOfAGuitarIsTheLatestInUseAndTheAnswerSaysWhatWasPassedOver() throws IOException {
        setAside();

        assertThat(bench.done("compare", "--instruments", "31", "33").out())
                .contains("Sitting 2 of instrument 33 left out, set aside: " + WRONG)
                .contains("2024-12-03");
        CommandRun json = bench.done("compare", "--instruments", "31", "33", "--json");
        JsonNode leftOut = new ObjectMapper().readTree(json.out()).get("left_out");
        assertThat(leftOut).hasSize(1);
        assertThat(leftOut.get(0).get("sitting").asText()).isEqualTo("2");
        assertThat(leftOut.get(0).get("shop_number").asText()).isEqualTo("33");
        assertThat(leftOut.get(0).get("reason").asText()).isEqualTo("set aside: " + WRONG);
        assertThat(json.err()).isEmpty();
    }

    @Test
    void aGuitarWhoseTapsAreAllSetAsideHasNoneInUse() {
        bench.done("sitting", "set-aside", "4", "--because", WRONG);

        assertThat(bench.run("compare", "--instruments", "31", "33").err())
                .contains("instrument 31 has no sitting of taps in use (sitting 4, set aside: " + WRONG + ")")
                .hasLineCount(1);
    }

    @Test
    void aBodyModelPassesOverCompanionsSetAsideAndSaysSo() {
        tapped(bench, "31", "31-2024-04-09-strung-hole-covered", "2024-04-10", "strung", "covered");
        assertThat(bench.done("model", "4").out()).contains("5");
        bench.done("sitting", "set-aside", "5", "--because", "the cover slipped");

        CommandRun without = bench.run("model", "4");

        assertThat(without.out() + without.err()).contains("sitting 5", "set aside", "the cover slipped");
    }

    @Test
    void aSittingSetAsideIsShownListedAndExportedAsSuch() throws IOException {
        setAside();

        assertThat(bench.done("sitting", "show", "2").out())
                .contains("set aside on 2026-03-14: " + WRONG, "analysis 1 of 1");
        assertThat(bench.done("sitting", "list").out()).contains("set aside: " + WRONG);
        assertThat(bench.done("instrument", "list").out()).containsPattern("33 +2, 1 set aside");
        JsonNode shown = bench.json("sitting", "show", "2");
        assertThat(shown.path("set_aside").asText()).isEqualTo(WRONG);
        assertThat(shown.path("set_aside_since").asText()).startsWith("2026-03-14");
        assertThat(bench.json("sitting", "show", "1").path("set_aside").isNull())
                .isTrue();
        Path tables = folder.resolve("tables");
        bench.done("export", tables);
        for (String table : List.of("sittings.csv", "resonances.csv", "strikes.csv", "recordings.csv")) {
            List<String> lines = Files.readAllLines(tables.resolve(table));
            assertThat(lines.get(0)).as(table).contains("set_aside");
            assertThat(lines.stream().filter(l -> l.startsWith("2,"))).as(table).isNotEmpty();
            assertThat(lines)
                    .as(table)
                    .allSatisfy(l -> assertThat(l.contains(WRONG)).isEqualTo(l.startsWith("2,")));
        }
    }

    @Test
    void aSittingTakenBackIsUsedAgain() {
        String before = bench.done("trend", "33").out();
        setAside();

        assertThat(bench.done("sitting", "set-aside", "2", "--take-back").out()).contains("is in use again");

        assertThat(bench.done("trend", "33").out()).isEqualTo(before);
        assertThat(bench.done("sitting", "show", "2").out()).doesNotContain("set aside");
        assertThat(bench.run("sitting", "set-aside", "2", "--take-back").err()).contains("sitting 2 is not set aside");
        assertThat(bench.done("verify").out()).contains("Everything is as it should be.");
    }

    @Test
    void settingAsideNeedsASittingAndAReason() {
        assertThat(bench.run("sitting", "set-aside", "2").err()).contains("--because", "--take-back");
        assertThat(bench.run("sitting", "set-aside", "2", "--because", " ").err())
                .contains("say in a few words what is wrong");
        assertThat(bench.run("sitting", "set-aside", "77", "--because", WRONG).err())
                .contains("there is no sitting 77");
        assertThat(bench.run("sitting", "set-aside", "2", "--because", WRONG, "--take-back")
                        .code())
                .isEqualTo(ExitCode.WRONG_USE);
        assertThat(bench.done("sitting", "show", "2").out()).doesNotContain("set aside");
    }

    /** Two recordings in one sitting, one of them of another guitar: the sitting is set aside, each added where it belongs. */
    @Test
    void aRecordingAddedAnewCountsThoughTheSittingSetAsideHoldsItToo() {
        setAside();
        tapped(bench, "34", "34-2024-05-28-strung", "2025-05-28", "later", "open");

        assertThat(bench.done("compare", "--group", "construction").out())
                .contains("sitting 2 of 33: set aside: " + WRONG)
                .doesNotContain("holds the same recording");
        assertThat(bench.done("trend", "34").out()).contains("2025-05-28");
    }

    @Test
    void aBackupKeepsWhatIsSetAside() {
        setAside();
        Path zip = folder.resolve("copy.zip");
        bench.done("backup", zip);
        CommandRun.of("restore", zip, folder.resolve("again"));

        assertThat(new ArchiveRun(folder.resolve("again"))
                        .done("sitting", "show", "2")
                        .out())
                .contains("set aside on 2026-03-14: " + WRONG);
    }

    private CommandRun setAside() {
        return bench.done("sitting", "set-aside", "2", "--because", WRONG);
    }
}
