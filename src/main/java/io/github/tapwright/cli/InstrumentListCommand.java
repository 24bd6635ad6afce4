package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.sitting.ShelfPlace;
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
        List<ShelfPlace> shelf = open.listInstruments().shelf();
        if (json) {
            terminal()
                    .print(ArchiveJson.instruments(
                            shelf.stream().map(ShelfPlace::instrument).toList()));
        } else if (shelf.isEmpty()) {
            terminal().say("The shelf is empty; put an instrument on it with: tapwright instrument add NUMBER");
        } else {
            Table table = new Table("number", "sittings", "about");
            shelf.forEach(p -> table.add(
                    p.instrument().shopNumber().text(),
                    p.sittings() + (p.setAside() == 0 ? "" : ", " + p.setAside() + " set aside"),
                    about(p.instrument())));
            table.lines().forEach(terminal().out()::println);
        }
        return ExitCode.DONE;
    }

    private static String about(Instrument instrument) {
        String kind = instrument.kind().words();
        String top =
                instrument.construction().kind().map(ConstructionKind::words).orElse("construction unknown");
        return kind + ", " + top
                + instrument.nickname().map(n -> ", “" + n + "”").orElse("");
    }
}
