package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.WrittenDown;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Corrects what was written down about a sitting. */
@Command(
        name = "edit",
        description = "Corrects what was written down about a sitting; what is not said stays as it was.",
        footer = {
            "",
            "The word unknown, or an empty text, takes back what was written down, as in",
            "--humidity unknown; an added mass is taken back with 0. What a correction",
            "replaces is kept and shown below the sitting. The soundhole decides which names",
            "are suggested: a correction there analyses anew, and earlier results stay."
        })
final class SittingEditCommand extends ArchiveCommand {

    @Parameters(paramLabel = "SITTING", converter = SittingIdConverter.class, description = "Number of the sitting.")
    private SittingId id = new SittingId(1);

    @Option(
            names = "--instrument",
            paramLabel = "NUMBER",
            description = "Shop number of the instrument it was really of; recordings, results and names go with it.")
    private Optional<String> instrument = Optional.empty();

    @Mixin
    private TakenOption taken = new TakenOption();

    @Mixin
    private ConditionOptions options = new ConditionOptions();

    SittingEditCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        ZoneId zone = bench().clock().getZone();
        EditSitting edit = open.editSitting();
        EditSitting.Edited edited = edit.edit(id, this::corrected, terminal().progress());
        Sitting sitting = edited.sitting();
        terminal()
                .say(
                        "Sitting %s of instrument %s, %s%n  %s",
                        sitting.id(),
                        sitting.instrument(),
                        sitting.takenAt().text(zone),
                        ConditionsText.line(sitting.conditions()));
        ConditionsText.takenOff(edited.before().conditions(), sitting.conditions())
                .ifPresent(line -> terminal().say("  %s", line));
        analysed(edited).ifPresent(line -> terminal().say("  %s", line));
        CorrectionText.lines(sitting, edit.corrected(id), zone)
                .forEach(line -> terminal().say("  %s", line));
        edited.failure().ifPresent(failure -> {
            throw failure;
        });
        return ExitCode.DONE;
    }

    private WrittenDown corrected(WrittenDown before) {
        return new WrittenDown(
                instrument.map(ShopNumber::new).orElse(before.instrument()),
                taken.moment(bench().clock().getZone()).orElse(before.takenAt()),
                options.applyTo(before.conditions()));
    }

    private static Optional<String> analysed(EditSitting.Edited edited) {
        if (edited.failure().isPresent()) {
            return Optional.of(
                    "names and figures are still those from before, because analysing anew failed; mend that and"
                            + " give the same command again");
        }
        if (edited.added().isPresent()) {
            return Optional.of("analysed anew for what is written down now: analysis "
                    + edited.added().get().number() + "; earlier results stay beside it");
        }
        return edited.holeChanged()
                ? Optional.of("analysed anew for this soundhole: every name and every figure is the same")
                : Optional.empty();
    }
}
