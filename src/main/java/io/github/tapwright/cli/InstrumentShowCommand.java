package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.FormerNumber;
import java.time.ZoneId;
import java.util.List;
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
        List<FormerNumber> former = open.showInstrument().formerNumbers(instrument.shopNumber());
        if (json) {
            terminal().print(ArchiveJson.instrument(instrument, former));
        } else {
            ZoneId zone = bench().clock().getZone();
            new InstrumentText(terminal(), zone).print(instrument, former);
            terminal().say("");
            new SittingListText(terminal(), zone).print(open.listSittings().of(instrument.shopNumber()));
        }
        return ExitCode.DONE;
    }
}
