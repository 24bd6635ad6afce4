package io.github.tapwright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands of sittings. */
@Command(
        name = "sitting",
        mixinStandardHelpOptions = true,
        description = "Visits of an instrument to the microphone: add, list, show, edit, reanalyse, name, set-aside.")
final class SittingGroup implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    static List<Object> commands(Bench bench, Terminal terminal) {
        return List.of(
                new SittingAddCommand(bench, terminal),
                new SittingListCommand(bench, terminal),
                new SittingShowCommand(bench, terminal),
                new SittingEditCommand(bench, terminal),
                new SittingReanalyseCommand(bench, terminal),
                new SittingNameCommand(bench, terminal),
                new SittingSetAsideCommand(bench, terminal));
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "sitting needs one of: add, list, show, edit, reanalyse, name, set-aside");
    }
}
