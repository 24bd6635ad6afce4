package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.sitting.Sitting;
import java.util.List;

/** What a command answers that has just kept a sitting. */
final class SittingAnswer {

    private final Bench bench;
    private final Terminal terminal;
    private final boolean json;

    SittingAnswer(Bench bench, Terminal terminal, boolean json) {
        this.bench = bench;
        this.terminal = terminal;
        this.json = json;
    }

    /** Prints the sitting; gives the exit code. */
    int give(OpenBench open, Sitting sitting) {
        if (json) {
            terminal.print(ArchiveJson.sitting(sitting, open.findTaps().near(sitting), List.of()));
        } else {
            new SittingText(terminal, bench.clock().getZone())
                    .print(sitting, open.findTaps().near(sitting));
        }
        boolean found = sitting.latest().findings().areUsable();
        if (!found) {
            terminal.note("the sitting is kept, but nothing usable was found in its recordings");
        }
        return found ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }
}
