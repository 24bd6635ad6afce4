package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Looks along the shelf. */
@Command(name = "list", description = "Lists the instruments.")
final class InstrumentListCommand extends ArchiveCommand {

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    InstrumentListCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        List<Instrument> instruments = open.listInstruments().list();
        if (json) {
            terminal().print(ArchiveJson.instruments(instruments));
        } else if (instruments.isEmpty()) {
            terminal().say("The shelf is empty; put an instrument on it with: tapwright instrument add NUMBER");
        } else {
            Table table = new Table("number", "sittings", "about");
            instruments.forEach(i -> table.add(i.shopNumber().text(), sittings(open, i), about(i)));
            table.lines().forEach(terminal().out()::println);
        }
        return ExitCode.DONE;
    }

    private static String sittings(OpenBench open, Instrument instrument) {
        return Integer.toString(open.listSittings().of(instrument.shopNumber()).size());
    }

    private static String about(Instrument instrument) {
        String kind = instrument.kind().words();
        String top =
                instrument.construction().kind().map(ConstructionKind::words).orElse("construction unknown");
        return kind + ", " + top
                + instrument.nickname().map(n -> ", “" + n + "”").orElse("");
    }
}
