package io.github.tapwright.cli;

import io.github.tapwright.archive.VerifyReport;
import io.github.tapwright.statistics.Figures;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Restores a backup. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Makes an archive from a backup, in a new or empty folder.")
final class RestoreCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "FILE", description = "A file that backup wrote.")
    private Path file = Path.of("");

    @Parameters(index = "1", paramLabel = "DIR", description = "A folder that is empty or does not exist yet.")
    private Path folder = Path.of("");

    RestoreCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        VerifyReport report = bench.restore(file, folder, terminal.progress());
        terminal.say(
                "Restored %s with %s into %s; every byte was checked.",
                Figures.count(report.sittingCount(), "sitting"),
                Figures.count(report.originalCount(), "original"),
                folder);
        return ExitCode.DONE;
    }
}
