package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows one instrument. */
@Command(name = "show", description = "Shows what is known about an instrument, and its sittings.")
final class InstrumentShowCommand extends ArchiveCommand {

    @Parameters(paramLabel = "NUMBER", description = "Its shop number.")
    private String number = "";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    InstrumentShowCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        Instrument instrument = open.showInstrument().show(new ShopNumber(number));
        if (json) {
            terminal().print(ArchiveJson.instrument(instrument));
        } else {
            new InstrumentText(terminal()).print(instrument);
            terminal().say("");
            new SittingListText(terminal(), bench().clock().getZone())
                    .print(open.listSittings().of(instrument.shopNumber()));
        }
        return ExitCode.DONE;
    }
}
