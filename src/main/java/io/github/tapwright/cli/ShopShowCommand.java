package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import picocli.CommandLine.Command;

/** Shows what stands at the head of reports. */
@Command(name = "show", description = "Shows what your workshop says of itself on its reports.")
final class ShopShowCommand extends ArchiveCommand {

    ShopShowCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        new ShopText(terminal()).print(open.editShop().show());
        return ExitCode.DONE;
    }
}
