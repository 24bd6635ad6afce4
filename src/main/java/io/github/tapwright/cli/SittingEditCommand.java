package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Corrects what was written down about a sitting. */
@Command(
        name = "edit",
        description = "Corrects what was written down about a sitting; an empty text means unknown.",
        footer = {"", "What a correction replaces is kept and shown below the sitting."})
final class SittingEditCommand extends ArchiveCommand {

    @Parameters(paramLabel = "SITTING", converter = SittingIdConverter.class, description = "Number of the sitting.")
    private SittingId id = new SittingId(1);

    @Mixin
    private ConditionOptions options = new ConditionOptions();

    SittingEditCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        EditSitting edit = open.editSitting();
        Sitting sitting = edit.edit(id, options::applyTo, terminal().progress());
        List<Conditions> before = edit.corrected(id);
        terminal()
                .say(
                        "Sitting %s of instrument %s%n  %s",
                        sitting.id(), sitting.instrument(), ConditionsText.line(sitting.conditions()));
        for (Conditions conditions : before) {
            terminal().say("  before a correction: %s", ConditionsText.line(conditions));
        }
        return ExitCode.DONE;
    }
}
