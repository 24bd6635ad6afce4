package io.github.tapwright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands of the shelf. */
@Command(
        name = "instrument",
        mixinStandardHelpOptions = true,
        description = "The instruments on the shelf: add, list, show, edit.")
final class InstrumentGroup implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    static List<Object> commands(Bench bench, Terminal terminal) {
        return List.of(
                new InstrumentAddCommand(bench, terminal),
                new InstrumentListCommand(bench, terminal),
                new InstrumentShowCommand(bench, terminal),
                new InstrumentEditCommand(bench, terminal));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "instrument needs one of: add, list, show, edit");
    }
}
