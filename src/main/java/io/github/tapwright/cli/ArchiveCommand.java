package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** A command that works on an archive, which is open while it runs. */
@Command(mixinStandardHelpOptions = true, sortOptions = false)
abstract class ArchiveCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    ArchiveCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    /** Does the work and returns the exit code. */
    abstract int run(OpenBench open);

    /** Whether an archive that does not exist yet is made. */
    boolean mayMakeTheArchive() {
        return false;
    }

    final Bench bench() {
        return bench;
    }

    final Terminal terminal() {
        return terminal;
    }

    @Override
    public final Integer call() {
        try (OpenBench open = bench.open(archive.folder(), mayMakeTheArchive(), terminal.progress())) {
            return run(open);
        }
    }
}
