package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Changes what is known about an instrument. */
@Command(
        name = "edit",
        description = "Changes what is known about an instrument; what is not said stays as it was.",
        footer = {
            "",
            "The word unknown, or an empty text, takes back what was written down, as in",
            "--core-mm unknown; an instrument always has a kind."
        })
final class InstrumentEditCommand extends ArchiveCommand {

    @Parameters(paramLabel = "NUMBER", description = "Its shop number.")
    private String number = "";

    @Mixin
    private InstrumentOptions options = new InstrumentOptions();

    InstrumentEditCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        Instrument changed = open.editInstrument().edit(new ShopNumber(number), options::applyTo);
        new InstrumentText(terminal()).print(changed);
        return ExitCode.DONE;
    }
}
