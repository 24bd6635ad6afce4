package io.github.tapwright.cli;

import io.github.tapwright.validation.ValidationBook;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
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

    private static final String HELP = "help";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Commands() {}

    /**
     * The commands, ready to execute some words. Building a command takes a hundredth of a second and more, so where the
     * first word names one, it is the only one built; help and complaints need them all.
     *
     * @param bench what the commands work with
     * @param terminal where they write
     * @param words the command line, which is only looked at
     */
    static CommandLine of(Bench bench, Terminal terminal, String... words) {
        Map<String, Supplier<Object>> table = table(bench, terminal);
        String first = words.length == 0 ? "" : words[0];
        Complaints complaints = new Complaints();
        CommandLine line = new CommandLine(new Commands());
        table.forEach((name, command) -> {
            if (name.equals(first) || !table.containsKey(first) || first.equals(HELP)) {
                line.addSubcommand(name, command.get());
            }
        });
        name(line);
        return line.registerConverter(Double.class, Decimals::decimal)
                .registerConverter(double.class, Decimals::decimal)
                .registerConverter(Integer.class, Decimals::whole)
                .registerConverter(int.class, Decimals::whole)
                .setOut(terminal.out())
                .setErr(terminal.err())
                .setExecutionExceptionHandler(complaints)
                .setParameterExceptionHandler(complaints)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpAutoWidth(false);
    }

    private static Map<String, Supplier<Object>> table(Bench bench, Terminal terminal) {
        Map<String, Supplier<Object>> table = new LinkedHashMap<>();
        table.put("taps", () -> new TapsCommand(bench, terminal));
        table.put("note", () -> new NoteCommand(bench, terminal));
        table.put("fingerboard", () -> new FingerboardCommand(bench, terminal));
        table.put("plucks", () -> new PlucksCommand(bench, terminal));
        table.put("level", () -> new LevelCommand(bench, terminal));
        table.put("instrument", () -> group(new InstrumentGroup(), InstrumentGroup.commands(bench, terminal)));
        table.put("sitting", () -> group(new SittingGroup(), SittingGroup.commands(bench, terminal)));
        table.put("record", () -> new RecordCommand(bench, terminal));
        table.put("calibration", () -> group(new CalibrationGroup(), CalibrationGroup.commands(bench, terminal)));
        table.put("compare", () -> new CompareCommand(bench, terminal));
        table.put("trend", () -> new TrendCommand(bench, terminal));
        table.put("repeatability", () -> new RepeatabilityCommand(bench, terminal));
        table.put("model", () -> new ModelCommand(bench, terminal));
        table.put("report", () -> new ReportCommand(bench, terminal));
        table.put("shop", () -> group(new ShopGroup(), ShopGroup.commands(bench, terminal)));
        table.put("export", () -> new ExportCommand(bench, terminal));
        table.put("verify", () -> new VerifyCommand(bench, terminal));
        table.put("backup", () -> new BackupCommand(bench, terminal));
        table.put("restore", () -> new RestoreCommand(bench, terminal));
        table.put("validate", () -> new ValidateCommand(ValidationBook.shipped(), terminal));
        table.put("demo", () -> new DemoCommand(bench, terminal));
        table.put(HELP, HelpCommand::new);
        return table;
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
        throw new ParameterException(
                spec.commandLine(), "choose a command, or start Tapwright without any for the desktop");
    }
}
