package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A mistyped shop number is put right: the sittings follow, the earlier number stays in sight. */
class RenumberTest {

    private static final Path RECORDING = CommandRun.DEMO.resolve("33-2024-05-14-strung.flac");

    @TempDir
    Path folder;

    private ArchiveRun bench;

    @BeforeEach
    void theNumberIsMistyped() {
        bench = ArchiveRun.with("85", folder);
        bench.done("sitting", "add", "85", RECORDING, "--taken", "2024-05-14", "--stage", "strung");
    }

    @Test
    void anInstrumentGetsTheNumberItShouldHaveHadAndItsSittingsFollow() throws IOException {
        String edited = bench.done("instrument", "edit", "85", "--shop-number", "58", "--nickname", "Anna")
                .out();

        assertThat(edited)
                .contains("Instrument 58, classical", "Anna")
                .containsPattern("before it was renumbered on \\d{4}-\\d\\d-\\d\\d: 85\n");
        assertThat(bench.done("sitting", "show", "1").out()).startsWith("Sitting 1 of instrument 58, 2024-05-14");
        assertThat(bench.done("trend", "58").out()).contains("2024-05-14");
        assertThat(bench.done("instrument", "list").out()).contains("58").doesNotContain("85");
        JsonNode shown = bench.json("instrument", "show", "58");
        assertThat(shown.path("former_shop_numbers").findValuesAsText("shop_number"))
                .containsExactly("85");
        assertThat(bench.done("verify").out()).contains("Everything is as it should be.");
    }

    @Test
    void theNumberBeforeLeadsToTheOneNowAndIsFreeAgain() {
        bench.done("instrument", "edit", "85", "--shop-number", "58");

        assertThat(bench.run("sitting", "add", "85", RECORDING).err())
                .contains("no instrument has the shop number 85; perhaps you mean 58, else add it first");
        bench.done("instrument", "add", "85");
        assertThat(bench.done("sitting", "list", "85").out()).doesNotContain("2024-05-14");
        assertThat(bench.run("instrument", "edit", "58", "--shop-number", "85").err())
                .contains("85 is taken", "move the sittings of 58 there");
    }

    @Test
    void aTakenNumberIsRefusedWithARemedyAndNothingChanges() {
        bench.done("instrument", "add", "58");

        CommandRun refused = bench.run("instrument", "edit", "85", "--shop-number", "58", "--nickname", "Anna");

        assertThat(refused.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(refused.err())
                .contains("the shop number 58 is taken", "sitting edit")
                .hasLineCount(1);
        assertThat(bench.done("instrument", "show", "85").out()).doesNotContain("Anna", "renumbered");
    }

    @Test
    void smallAndCapitalLettersMakeNoOtherGuitar() {
        bench.done("instrument", "add", "58a");

        for (Object[] wrong :
                new Object[][] {{"instrument", "add", "58A"}, {"instrument", "edit", "85", "--shop-number", "58A"}}) {
            assertThat(bench.run(wrong).err())
                    .contains("58A would differ from 58a, which is taken, only in small and capital letters")
                    .hasLineCount(1);
        }
        assertThat(bench.run("instrument", "show", "58A").err()).contains("perhaps you mean 58a");
        // its own letters may be put right
        assertThat(bench.done("instrument", "edit", "58a", "--shop-number", "58A")
                        .out())
                .startsWith("Instrument 58A");
    }

    @Test
    void anEditOfSomethingElseIsNoNumberBefore() {
        bench.done("instrument", "edit", "85", "--nickname", "Anna");
        bench.done("instrument", "edit", "85", "--shop-number", "57");
        bench.done("instrument", "edit", "57", "--nickname", "Berta");
        bench.done("instrument", "edit", "57", "--shop-number", "58");

        assertThat(bench.done("instrument", "show", "58").out().lines().filter(l -> l.contains("renumbered")))
                .hasSize(2)
                .first()
                .asString()
                .endsWith(": 85");
    }
}
