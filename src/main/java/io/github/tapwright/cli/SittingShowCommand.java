package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.WrittenDown;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows one sitting. */
@Command(name = "show", description = "Shows a sitting with its conditions and results.")
final class SittingShowCommand extends ArchiveCommand {

    @Parameters(paramLabel = "SITTING", converter = SittingIdConverter.class, description = "Number of the sitting.")
    private SittingId id = new SittingId(1);

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Option(
            names = "--plot",
            paramLabel = "OUT",
            description = "Write the response curve, or the maps of a run of notes, as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    SittingShowCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        plot.ifPresent(PictureOption::check);
        Sitting sitting = open.showSitting().show(id);
        Optional<Sitting> taps = open.findTaps().near(sitting);
        List<WrittenDown> corrected = open.editSitting().corrected(id);
        ZoneId zone = bench().clock().getZone();
        SittingText text = new SittingText(terminal(), zone);
        if (json) {
            terminal().print(ArchiveJson.sitting(sitting, taps, corrected));
        } else {
            text.print(sitting, taps);
            CorrectionText.lines(sitting, corrected, zone)
                    .forEach(line -> terminal().say("  %s", line));
        }
        if (plot.isPresent()) {
            text.draw(sitting, plot.get());
        }
        return ExitCode.DONE;
    }
}
