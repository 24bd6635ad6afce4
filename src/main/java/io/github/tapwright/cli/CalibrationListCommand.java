package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.CalibrationJson;
import io.github.tapwright.sitting.KeptCalibration;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists calibrations. */
@Command(name = "list", description = "Lists the calibrations of the archive and what each holds for.")
final class CalibrationListCommand extends ArchiveCommand {

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    CalibrationListCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        List<KeptCalibration> calibrations = open.listCalibrations().all();
        if (json) {
            terminal().print(CalibrationJson.all(calibrations));
        } else {
            new CalibrationText(terminal(), bench().clock().getZone()).printList(calibrations);
        }
        return ExitCode.DONE;
    }
}
