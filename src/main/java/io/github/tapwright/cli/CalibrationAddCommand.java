package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.CalibrationJson;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.sitting.CalibrationRequest;
import io.github.tapwright.sitting.KeptCalibration;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps a calibration. */
@Command(name = "add", description = "Keeps a recorded calibrator tone, and what it says about microphone and gain.")
final class CalibrationAddCommand extends ArchiveCommand {

    @Parameters(paramLabel = "FILE", description = "The recorded tone, some ten seconds of it.")
    private Path file = Path.of("");

    @Option(
            names = "--level",
            required = true,
            paramLabel = "DB",
            converter = ToneConverter.class,
            description = "What the calibrator makes, dB SPL, such as 94; 94:0.5 adds its tolerance, "
                    + "0.25 dB (class 1) unless told otherwise.")
    private CalibratorTone tone = CalibratorTone.classOne(94);

    @Option(names = "--gain", paramLabel = "TEXT", description = "Input and gain as you read them.")
    private Optional<String> gain = Optional.empty();

    @Option(names = "--microphone", paramLabel = "TEXT", description = "Which microphone.")
    private Optional<String> microphone = Optional.empty();

    @Mixin
    private TakenOption taken = new TakenOption();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    CalibrationAddCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    boolean mayMakeTheArchive() {
        return true;
    }

    @Override
    int run(OpenBench open) {
        ZoneId zone = bench().clock().getZone();
        CalibrationRequest request =
                new CalibrationRequest(file, tone, taken.moment(zone), new CalibratedInput(microphone, gain));
        KeptCalibration kept = open.addCalibration().add(request, terminal().progress());
        if (json) {
            terminal().print(CalibrationJson.one(kept));
        } else {
            new CalibrationText(terminal(), zone).printKept(kept);
        }
        return ExitCode.DONE;
    }
}
