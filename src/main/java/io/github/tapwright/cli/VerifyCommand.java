package io.github.tapwright.cli;

import io.github.tapwright.archive.VerifyReport;
import io.github.tapwright.archive.VerifyReport.WaitingRecording;
import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.statistics.Figures;
import java.nio.file.Path;
import picocli.CommandLine.Command;

/** Checks an archive. */
@Command(name = "verify", description = "Reads every byte of the archive and compares it with what should be there.")
final class VerifyCommand extends ArchiveCommand {

    VerifyCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        VerifyReport report = open.verify();
        terminal()
                .say(
                        "%s: %s, %s read, %s",
                        open.folder(),
                        Figures.count(report.sittingCount(), "sitting"),
                        Figures.count(report.originalCount(), "original"),
                        Figures.count(report.calibrationCount(), "calibration"));
        report.problems().forEach(p -> terminal().say("  wrong: %s", p));
        report.unreferenced().forEach(p -> terminal().say("  kept although nothing refers to it: %s", p));
        report.temporary().forEach(p -> terminal().say("  %s", words(p)));
        report.waiting().forEach(w -> terminal().say("  %s", words(w)));
        terminal().say(report.clean() ? "Everything is as it should be." : "The archive is damaged, see above.");
        return report.clean() ? ExitCode.DONE : ExitCode.ARCHIVE;
    }

    /** A copy on its way in is the maker's file once more; sound that was recorded may be nowhere else. */
    private static String words(Path leftOver) {
        return leftOver.startsWith("originals")
                ? "a copy left over from a program that was stopped: " + leftOver
                        + "; it does no harm and may be deleted while no other Tapwright runs, your own file is where it was"
                : "left over from a program that was stopped: " + leftOver
                        + "; no recording that waits, so listen to it before you delete it";
    }

    private static String words(WaitingRecording waiting) {
        return waiting.running()
                ? "being recorded just now: " + waiting.file()
                : "a recording that waits to be kept: " + waiting.file() + "; keep it with record --recover "
                        + waiting.id() + ", or in the window under Sitting";
    }
}
