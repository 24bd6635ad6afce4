package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingSummary;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists sittings. */
@Command(name = "list", description = "Lists the sittings, of one instrument or of all.")
final class SittingListCommand extends ArchiveCommand {

    @Parameters(arity = "0..1", paramLabel = "NUMBER", description = "Shop number of an instrument.")
    private Optional<String> number = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    SittingListCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        List<SittingSummary> sittings = number.map(n -> open.listSittings().of(new ShopNumber(n)))
                .orElseGet(() -> open.listSittings().all());
        if (json) {
            terminal()
                    .print(ArchiveJson.sittings(sittings.stream()
                            .map(s -> open.showSitting().show(s.id()))
                            .toList()));
        } else {
            new SittingListText(terminal(), bench().clock().getZone()).print(sittings);
        }
        return ExitCode.DONE;
    }
}
