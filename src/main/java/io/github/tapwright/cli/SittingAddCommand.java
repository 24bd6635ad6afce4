package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingRequest;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a sitting. */
@Command(name = "add", description = "Keeps recordings of one visit to the microphone, and what they show.")
final class SittingAddCommand extends ArchiveCommand {

    @Parameters(index = "0", paramLabel = "NUMBER", description = "Shop number of the instrument.")
    private String number = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "Recordings, analysed as one set.")
    private List<Path> files = List.of();

    @Mixin
    private TakenOption taken = new TakenOption();

    @Mixin
    private ProcedureOptions procedure = new ProcedureOptions();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private ConditionOptions conditions = new ConditionOptions();

    SittingAddCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        ZoneId zone = bench().clock().getZone();
        SittingRequest request = new SittingRequest(
                new ShopNumber(number), taken.moment(zone), conditions.conditions(), files, procedure.procedure());
        Sitting sitting = open.addSitting().add(request, terminal().progress());
        return new SittingAnswer(bench(), terminal(), json).give(open, sitting);
    }
}
