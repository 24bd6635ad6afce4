package io.github.tapwright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands of calibrations. */
@Command(
        name = "calibration",
        mixinStandardHelpOptions = true,
        description = "Calibrator tones, each of one microphone, input and gain: add, list, withdraw.")
final class CalibrationGroup implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    static List<Object> commands(Bench bench, Terminal terminal) {
        return List.of(
                new CalibrationAddCommand(bench, terminal),
                new CalibrationListCommand(bench, terminal),
                new CalibrationWithdrawCommand(bench, terminal));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "calibration needs one of: add, list, withdraw");
    }
}
