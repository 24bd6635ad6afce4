package io.github.tapwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program's entry: one command line, subcommands below it. */
@Command(
        name = "tapwright",
        mixinStandardHelpOptions = true,
        description = "An acoustic test and voicing bench for finished guitars.")
public final class Tapwright {

    private Tapwright() {}

    /**
     * Starts the program.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.exit(new CommandLine(new Tapwright()).execute(args));
    }
}
