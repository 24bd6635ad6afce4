package io.github.tapwright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands for what stands at the head of reports. */
@Command(
        name = "shop",
        mixinStandardHelpOptions = true,
        description = "What your workshop says of itself on its reports: show, edit.")
final class ShopGroup implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    static List<Object> commands(Bench bench, Terminal terminal) {
        return List.of(new ShopShowCommand(bench, terminal), new ShopEditCommand(bench, terminal));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "shop needs one of: show, edit");
    }
}
