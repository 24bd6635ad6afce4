package io.github.tapwright.cli;

import io.github.tapwright.validation.ValidationBook;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** All commands under one name. */
@Command(
        name = "tapwright",
        mixinStandardHelpOptions = true,
        description = "An acoustic test and voicing bench for finished guitars.",
        footer = {
            "",
            "Exit codes: 0 done; 1 done, but nothing usable was found (validate: a check failed); 2 wrong use;",
            "3 a recording cannot be read; 4 archive trouble."
        })
final class Commands implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Commands() {}

    static CommandLine of(Bench bench, Terminal terminal) {
        Complaints complaints = new Complaints();
        CommandLine line = new CommandLine(new Commands());
        line.addSubcommand(new TapsCommand(bench, terminal));
        line.addSubcommand(new NoteCommand(bench, terminal));
        line.addSubcommand(new FingerboardCommand(bench, terminal));
        line.addSubcommand(new PlucksCommand(bench, terminal));
        line.addSubcommand(new LevelCommand(bench, terminal));
        line.addSubcommand(group(new InstrumentGroup(), InstrumentGroup.commands(bench, terminal)));
        line.addSubcommand(group(new SittingGroup(), SittingGroup.commands(bench, terminal)));
        line.addSubcommand(new RecordCommand(bench, terminal));
        line.addSubcommand(group(new CalibrationGroup(), CalibrationGroup.commands(bench, terminal)));
        line.addSubcommand(new CompareCommand(bench, terminal));
        line.addSubcommand(new TrendCommand(bench, terminal));
        line.addSubcommand(new RepeatabilityCommand(bench, terminal));
        line.addSubcommand(new ModelCommand(bench, terminal));
        line.addSubcommand(new ReportCommand(bench, terminal));
        line.addSubcommand(group(new ShopGroup(), ShopGroup.commands(bench, terminal)));
        line.addSubcommand(new ExportCommand(bench, terminal));
        line.addSubcommand(new VerifyCommand(bench, terminal));
        line.addSubcommand(new BackupCommand(bench, terminal));
        line.addSubcommand(new RestoreCommand(bench, terminal));
        line.addSubcommand(new ValidateCommand(ValidationBook.shipped(), terminal));
        line.addSubcommand(new DemoCommand(bench, terminal));
        line.addSubcommand(new HelpCommand());
        name(line);
        return line.setOut(terminal.out())
                .setErr(terminal.err())
                .setExecutionExceptionHandler(complaints)
                .setParameterExceptionHandler(complaints)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpAutoWidth(false);
    }

    /** Every command answers --version alike. */
    private static void name(CommandLine line) {
        String version = Commands.class.getPackage().getImplementationVersion();
        line.getCommandSpec()
                .version("Tapwright " + (version == null ? "(not packaged)" : version), "GPL-3.0-or-later");
        line.getSubcommands().values().forEach(Commands::name);
    }

    private static CommandLine group(Object group, List<Object> commands) {
        CommandLine line = new CommandLine(group);
        commands.forEach(line::addSubcommand);
        return line;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getErr());
        throw new ParameterException(spec.commandLine(), "there is no desktop yet; choose a command");
    }
}
