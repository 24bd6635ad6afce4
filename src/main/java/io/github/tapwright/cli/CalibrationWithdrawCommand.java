package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.WithdrawCalibration;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Withdraws a calibration, or takes it back. */
@Command(
        name = "withdraw",
        description = "Withdraws a calibration that was wrong, or takes it back.",
        footer = {
            "",
            "A calibration withdrawn is kept and listed with the reason; nothing new uses it. Levels of sittings that rest",
            "on it are no sound pressure levels any more and are compared with nothing, until they are measured anew."
        })
final class CalibrationWithdrawCommand extends ArchiveCommand {

    @Parameters(
            paramLabel = "CALIBRATION",
            converter = CalibrationChoice.CalibrationIdConverter.class,
            description = "Number of the calibration.")
    private CalibrationId id = new CalibrationId(1);

    @Mixin
    private OutOfUseOptions options = new OutOfUseOptions();

    CalibrationWithdrawCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        WithdrawCalibration withdraw = open.withdrawCalibration();
        KeptCalibration kept =
                options.apply("calibration", why -> withdraw.withdraw(id, why), () -> withdraw.takeBack(id));
        terminal()
                .say(
                        "Calibration %s, %s, %s, %s",
                        kept.id(),
                        kept.takenAt().text(bench().clock().getZone()),
                        kept.tone().fileName(),
                        kept.withdrawn()
                                .map(why -> "is withdrawn: " + why.reason())
                                .orElse("is in use again"));
        if (kept.withdrawn().isPresent()) {
            sayWhatRests(withdraw.restingOn(id));
        }
        return ExitCode.DONE;
    }

    private void sayWhatRests(List<SittingId> resting) {
        if (resting.isEmpty()) {
            terminal().say("  no sitting rests on it");
            return;
        }
        String numbers = resting.stream().map(SittingId::toString).collect(Collectors.joining(" "));
        terminal().say("  levels of sittings that rest on it, which are no sound pressure levels now: %s", numbers);
        terminal().say("  measure them anew without it: tapwright sitting reanalyse %s", numbers);
        terminal().say("  or by another calibration: tapwright sitting reanalyse %s --calibrated-by ID", numbers);
    }
}
