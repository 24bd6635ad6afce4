package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.WithdrawCalibration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
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

    @Option(names = "--because", paramLabel = "REASON", description = "What is wrong with it.")
    private Optional<String> reason = Optional.empty();

    @Option(names = "--take-back", description = "Use it again.")
    private boolean takeBack;

    CalibrationWithdrawCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        Given.refuse(
                reason.isPresent() == takeBack,
                "say what is wrong with --because \"REASON\", or use the calibration again with --take-back");
        WithdrawCalibration withdraw = open.withdrawCalibration();
        KeptCalibration kept = reason.map(why -> withdraw.withdraw(id, why)).orElseGet(() -> withdraw.takeBack(id));
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
