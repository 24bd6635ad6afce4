package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingComparison;
import io.github.tapwright.exchange.ComparisonJson;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
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
            description = "Spread of setting up: frequency in %%, Q in %%, level in dB; 0.3:5:1 if left out.")
    private SetUpSpread spread = SetUpSpread.USUAL;

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Option(names = "--plot", paramLabel = "OUT", description = "Write both response curves as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    CompareCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) throws IOException {
        plot.ifPresent(PictureOption::check);
        Sitting before = sitting(open, first);
        Sitting after = sitting(open, second);
        if (before.id().equals(after.id())) {
            throw new RefusedEntryException("both are sitting " + before.id() + "; choose two different ones");
        }
        SittingComparison comparison = SittingComparison.of(before, after, spread);
        ComparisonText text = new ComparisonText(terminal(), bench().clock().getZone());
        if (json) {
            List<String> differences = ConditionsText.differences(before.conditions(), after.conditions());
            terminal().print(ComparisonJson.of(before, after, comparison, differences, spread));
        } else {
            text.print(before, after, comparison, spread);
        }
        if (plot.isPresent()) {
            text.draw(before, after, plot.get());
        }
        return comparison.changes().isEmpty() ? ExitCode.NOTHING_USABLE : ExitCode.DONE;
    }

    private Sitting sitting(OpenBench open, String text) {
        SittingId id = instruments ? latest(open, new ShopNumber(text)) : new SittingIdConverter().convert(text);
        return open.showSitting().show(id).requireTaps();
    }

    private static SittingId latest(OpenBench open, ShopNumber instrument) {
        return open.listSittings().of(instrument).stream()
                .filter(s -> s.procedure().equals(Procedure.BodyTaps.KEY))
                .max(Comparator.comparing((SittingSummary s) -> s.takenAt().instant()))
                .map(SittingSummary::id)
                .orElseThrow(() -> new RefusedEntryException(
                        "instrument " + instrument + " has no sitting of taps yet; add one, or compare others"));
    }
}
