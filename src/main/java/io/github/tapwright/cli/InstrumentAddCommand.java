package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Puts an instrument on the shelf. */
@Command(name = "add", description = "Puts an instrument on the shelf; all but its number may stay unknown.")
final class InstrumentAddCommand extends ArchiveCommand {

    @Parameters(paramLabel = "NUMBER", description = "Its shop number.")
    private String number = "";

    @Mixin
    private InstrumentOptions options = new InstrumentOptions();

    InstrumentAddCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    boolean mayMakeTheArchive() {
        return true;
    }

    @Override
    int run(OpenBench open) {
        Instrument bare = Instrument.of(new ShopNumber(number), InstrumentKind.CLASSICAL);
        Instrument instrument = options.applyTo(bare);
        open.addInstrument().add(instrument);
        terminal()
                .say(
                        "Added instrument %s (%s).",
                        instrument.shopNumber(), instrument.kind().words());
        return ExitCode.DONE;
    }
}
