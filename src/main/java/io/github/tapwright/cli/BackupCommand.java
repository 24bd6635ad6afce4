package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Backs an archive up. */
@Command(name = "backup", description = "Writes the whole archive into one ZIP file.")
final class BackupCommand extends ArchiveCommand {

    @Parameters(paramLabel = "FILE", description = "A file that does not exist yet.")
    private Path file = Path.of("");

    BackupCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        open.backUp(file);
        terminal().say("Backed up %s into %s.", open.folder(), file);
        return ExitCode.DONE;
    }
}
