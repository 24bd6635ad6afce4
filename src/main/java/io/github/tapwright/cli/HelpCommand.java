package io.github.tapwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a command, however deep it lies. */
@Command(name = "help", mixinStandardHelpOptions = true, description = "Explains a command, such as: help sitting add")
final class HelpCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..*", paramLabel = "COMMAND", description = "The command to explain; all if left out.")
    private List<String> path = List.of();

    @Override
    public Integer call() {
        CommandLine explained = spec.parent().commandLine();
        for (String name : path) {
            CommandLine below = explained.getSubcommands().get(name);
            if (below == null) {
                String asked = String.join(" ", path);
                throw new ParameterException(spec.commandLine(), "there is no command '" + asked + "'");
            }
            explained = below;
        }
        explained.usage(spec.commandLine().getOut());
        return ExitCode.DONE;
    }
}
