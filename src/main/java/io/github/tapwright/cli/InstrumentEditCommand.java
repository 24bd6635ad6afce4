package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Changes what is known about an instrument. */
@Command(
        name = "edit",
        description = "Changes what is known about an instrument; what is not said stays as it was.",
        footer = {
            "",
            "The word unknown, or an empty text, takes back what was written down, as in",
            "--core-mm unknown; an instrument always has a kind. A mistyped number is put right",
            "with --shop-number; its sittings follow, and the earlier number stays below it."
        })
final class InstrumentEditCommand extends ArchiveCommand {

    @Parameters(paramLabel = "NUMBER", description = "Its shop number.")
    private String number = "";

    @Option(
            names = "--shop-number",
            paramLabel = "NUMBER",
            description = "The number it should have had; its sittings follow.")
    private Optional<String> shopNumber = Optional.empty();

    @Mixin
    private InstrumentOptions options = new InstrumentOptions();

    InstrumentEditCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        Instrument changed = open.editInstrument().edit(new ShopNumber(number), this::corrected);
        new InstrumentText(terminal(), bench().clock().getZone())
                .print(changed, open.showInstrument().formerNumbers(changed.shopNumber()));
        return ExitCode.DONE;
    }

    private Instrument corrected(Instrument before) {
        Instrument said = options.applyTo(before);
        return shopNumber.map(n -> said.renumbered(new ShopNumber(n))).orElse(said);
    }
}
