package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.exchange.HistoryJson;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.picture.HistoryPictures;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Follows an instrument over time. */
@Command(
        name = "trend",
        description = "Follows each resonance of an instrument, and its plucks' level, over all its sittings.",
        footer = {
            "",
            "A drift is sought since the strings or the stage last changed. It takes five sittings at least, better eight",
            "through more than one season, each with its humidity."
        })
final class TrendCommand extends ArchiveCommand {

    @Parameters(index = "0", paramLabel = "INSTRUMENT", description = "Shop number.")
    private String instrument = "";

    @Option(
            names = "--spread",
            paramLabel = "%F:%Q:DB",
            converter = SpreadConverter.class,
            description =
                    "Spread of setting up: frequency in %%, Q in %%, level in dB; the study kept by repeatability, else 0.3:5:1, if left out.")
    private Optional<SetUpSpread> spread = Optional.empty();

    @Option(
            names = "--shop-window",
            paramLabel = "LO:HI",
            converter = WindowConverter.class,
            description = "Relative humidity the shop keeps, %%; 40:50 if left out.")
    private ShopWindow window = ShopWindow.USUAL;

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private TableOption csv = new TableOption();

    @Option(names = "--plot", paramLabel = "OUT", description = "Write the history as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    TrendCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        plot.ifPresent(PictureOption::check);
        csv.refuseUnlessTable();
        History history = open.followInstrument().follow(new ShopNumber(instrument), spread, window);
        if (json) {
            terminal().print(HistoryJson.of(history));
        } else {
            new HistoryText(terminal(), bench().clock().getZone()).print(history);
        }
        csv.write(() -> HistoryJson.csv(history), terminal());
        if (plot.isPresent()) {
            new PictureOption.Drawn(HistoryPictures.of(history, bench().clock().getZone()))
                    .write(plot.get(), terminal(), "there is nothing to draw");
        }
        return history.series().isEmpty() ? ExitCode.NOTHING_USABLE : ExitCode.DONE;
    }
}
