package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.exchange.ComparisonJson;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two sittings. */
@Command(
        name = "compare",
        description = "Compares two sittings, or the latest sittings of two instruments.",
        footer = {
            "",
            "Setting up again moves every figure a little. Measure how far on your bench, with five sittings",
            "of one instrument on one day, and give it with --spread."
        })
final class CompareCommand extends ArchiveCommand {

    @Parameters(index = "0", paramLabel = "A", description = "Number of a sitting, or a shop number.")
    private String first = "";

    @Parameters(index = "1", paramLabel = "B", description = "Another.")
    private String second = "";

    @Option(names = "--instruments", description = "A and B are shop numbers; their latest sittings are compared.")
    private boolean instruments;

    @Option(
            names = "--spread",
            paramLabel = "%F:%Q:DB",
            converter = SpreadConverter.class,
            description =
                    "Spread of setting up: frequency in %%, Q in %%, level in dB; the study kept by repeatability, else 0.3:5:1, if left out.")
    private Optional<SetUpSpread> spread = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Option(names = "--plot", paramLabel = "OUT", description = "Write both response curves as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    @Option(
            names = "--despite",
            paramLabel = "REASON",
            description = "Show refused figures too; the reason stays on the result.")
    private Optional<String> despite = Optional.empty();

    @Option(
            names = "--shop-window",
            paramLabel = "LO:HI",
            converter = WindowConverter.class,
            description = "Relative humidity the shop keeps, %%; 40:50 if left out.")
    private ShopWindow window = ShopWindow.USUAL;

    CompareCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) throws IOException {
        plot.ifPresent(PictureOption::check);
        CompareSittings compare = open.compareSittings();
        CompareSittings.Compared compared = compare.compare(
                sitting(compare, first),
                sitting(compare, second),
                new CompareSittings.Settings(spread, window, despite));
        ComparisonText text = new ComparisonText(terminal(), bench().clock().getZone());
        if (json) {
            terminal().print(ComparisonJson.of(compared));
        } else {
            text.print(compared);
        }
        if (plot.isPresent()) {
            text.draw(compared, plot.get());
        }
        return compared.comparison().changes().isEmpty() ? ExitCode.NOTHING_USABLE : ExitCode.DONE;
    }

    private SittingId sitting(CompareSittings compare, String text) {
        return instruments ? compare.latest(new ShopNumber(text)) : new SittingIdConverter().convert(text);
    }
}
