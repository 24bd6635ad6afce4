package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports from the command line, on real recordings. */
class ReportCommandTest {

    @TempDir
    Path folder;

    private Path archive;

    @BeforeEach
    void twoSittings() {
        archive = folder.resolve("archive");
        assertThat(run("instrument", "add", "36").code()).isZero();
        for (String file : new String[] {"36-2024-08-06-finished.flac", "36-2024-09-03-strung.flac"}) {
            assertThat(run("sitting", "add", "36", CommandRun.DEMO.resolve(file))
                            .code())
                    .isZero();
        }
    }

    @Test
    void reportsAreWrittenInTheFormTheFileNameAsksForUnderTheWorkshopsName() throws Exception {
        assertThat(run("shop", "edit", "--name", "Oar Lane workshop", "--address", "Tidewick")
                        .out())
                .contains("Workshop: Oar Lane workshop", "Tidewick", "picture: none");
        Path html = folder.resolve("report.html");
        CommandRun written = run("report", "2", "--against", "1", "--kind", "workshop", "--out", html);

        assertThat(written.code()).as(written.err()).isZero();
        assertThat(written.err()).contains("wrote " + html);
        assertThat(Files.readString(html))
                .contains("Oar Lane workshop", "Compared with sitting 1", "SHA-256", "Made on 2026-03-14");
        Path pdf = folder.resolve("history.pdf");
        assertThat(run("report", "--trend", "36", "--out", pdf).code()).isZero();
        assertThat(Files.readAllBytes(pdf)).startsWith('%', 'P', 'D', 'F');
        assertThat(run("report", "--group", "construction", "--out", folder.resolve("groups.html"))
                        .code())
                .isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(run("verify").code()).isZero();
    }

    /** Five per cent of main air hide every fit: what is shown then is ± the bench's own spread, 1.96 · 5 % of 106 Hz. */
    @Test
    void oneSittingCountsWithTheSpreadTheMakerGives() throws Exception {
        Path wide = folder.resolve("wide.html");
        assertThat(run("report", "1", "--spread", "5:5:1", "--out", wide).code())
                .isZero();
        Path usual = folder.resolve("usual.html");
        assertThat(run("report", "1", "--out", usual).code()).isZero();

        assertThat(inShort(wide)).contains("main air resonance lies at 106 ± 10 Hz", "(as given)");
        assertThat(inShort(usual))
                .contains("main air resonance lies at 106.3 ± 0.7 Hz")
                .doesNotContain("(as given)");
    }

    @Test
    void whereNothingUsableStandsInAReportTheReasonIsSaidToo() {
        assertThat(run("instrument", "add", "50").code()).isZero();
        Path empty = folder.resolve("empty.html");

        CommandRun history = run("report", "--trend", "50", "--out", empty);
        assertThat(history.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(history.err())
                .contains("wrote " + empty)
                .contains("nothing usable stands in it: there is no sitting with a named resonance or with plucks");
        CommandRun groups = run("report", "--group", "construction", "--out", empty);
        assertThat(groups.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(groups.err()).contains("nothing usable stands in it: there are no two groups to compare");
        assertThat(run("report", "2", "--out", empty).err())
                .contains("wrote " + empty)
                .doesNotContain("nothing usable");
    }

    @Test
    void whoeverGivesShopNumbersForSittingsIsToldHowToCompareInstruments() {
        assertThat(run("instrument", "add", "B-7").code()).isZero();

        CommandRun labels = run("compare", "36", "B-7");
        assertThat(labels.code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(labels.err())
                .contains("there is no sitting 36, but an instrument with that shop number")
                .contains("compare --instruments 36 B-7 compares the latest sittings of two instruments");
        assertThat(run("compare", "1", "B-7").err()).contains("there is no sitting B-7, but an instrument");
        assertThat(run("compare", "1", "9").err())
                .contains("there is no sitting 9;")
                .doesNotContain("--instruments");
        assertThat(run("compare", "1", "x").err()).contains("sittings are numbered 1, 2, 3");
        assertThat(run("compare", "1", "2").code()).isZero();
    }

    private static String inShort(Path html) throws IOException {
        String whole = Files.readString(html);
        return whole.substring(whole.indexOf("In short"), whole.indexOf("How the body answers"));
    }

    @Test
    void slipsAreRefusedWithARemedy() {
        assertThat(run("report", "1", "--out", "report.txt").err()).contains(".pdf or .html");
        assertThat(run("report", "--out", folder.resolve("a.pdf")).err()).contains("the number of a sitting");
        assertThat(run("report", "1", "--trend", "36").code()).isEqualTo(ExitCode.WRONG_USE);
        assertThat(run("report", "--trend", "36", "--against", "1").err()).contains("--against goes with");
        assertThat(run("report", "9", "--out", folder.resolve("a.pdf")).err()).contains("no sitting 9");
        assertThat(run("shop", "edit", "--picture", "a.png", "--no-picture").code())
                .isEqualTo(ExitCode.WRONG_USE);
        assertThat(folder.resolve("a.pdf")).doesNotExist();
    }

    private CommandRun run(Object... words) {
        Object[] line = new Object[words.length + 2];
        System.arraycopy(words, 0, line, 0, words.length);
        line[words.length] = "--archive";
        line[words.length + 1] = archive;
        return CommandRun.of(line);
    }
}
