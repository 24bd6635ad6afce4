package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.body.BodyRequest;
import io.github.tapwright.comparison.body.FittedBody;
import io.github.tapwright.exchange.BodyModelJson;
import io.github.tapwright.instrument.Entry;
import io.github.tapwright.mode.body.Answer;
import io.github.tapwright.mode.body.BodyChange;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.statistics.Estimate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Fits the coupled body of top, back and air to a sitting. */
@Command(
        name = "model",
        description = "Says what top, back and air would do by themselves, how heavy and stiff the top is, and what a"
                + " change would do.",
        footer = {
            "",
            "SITTING has the hole open. One more sitting with the hole covered, and one with a mass of 10 to 25 g on the",
            "bridge, tell the rest; they are found by themselves, nearest in time."
        })
final class ModelCommand extends ArchiveCommand {

    @Parameters(
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "Sitting with the hole open.")
    private SittingId open = new SittingId(1);

    @Option(
            names = "--covered",
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "The sitting with the hole covered.")
    private Optional<SittingId> covered = Optional.empty();

    @Option(
            names = "--loaded",
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "The sitting with an added mass.")
    private Optional<SittingId> loaded = Optional.empty();

    @Option(
            names = "--volume",
            paramLabel = "L[:U]",
            converter = VolumeConverter.class,
            description = "Volume of the box in litres with its standard uncertainty; 2 %% of it if left out.")
    private Optional<Estimate> volumeLitres = Optional.empty();

    @Option(
            names = "--hole-radius",
            paramLabel = "MM",
            description = "Radius of the soundhole; half the instrument's soundhole diameter if left out.")
    private Optional<Double> holeRadiusMm = Optional.empty();

    @Option(
            names = "--top-thickness",
            paramLabel = "MM",
            description = "Thickness of the top at the hole; that of its layers if left out.")
    private Optional<Double> topThicknessMm = Optional.empty();

    @Option(
            names = "--back",
            description = "The back must take part; else it does if main back was found in every sitting.")
    private boolean back;

    @Option(
            names = "--spread",
            paramLabel = "%F:%Q:DB",
            converter = SpreadConverter.class,
            description = "Spread of setting up, as for compare.")
    private Optional<SetUpSpread> spread = Optional.empty();

    @Option(
            names = "--what-if",
            paramLabel = "CHANGE",
            converter = WhatIfConverter.class,
            description = "Such as mass=+5g,stiffness=-5%%,hole=+1mm,volume=-0.5l; the hole by its radius.")
    private Optional<BodyChange> change = Optional.empty();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private TableOption csv = new TableOption();

    ModelCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench bench) {
        csv.refuseUnlessTable();
        FittedBody body =
                bench.bodyModelOfSitting().fit(new BodyRequest(open, covered, loaded, spread, back, box(), change));
        if (json) {
            terminal().print(BodyModelJson.of(body));
        } else {
            new BodyModelText(terminal(), bench().clock().getZone()).print(body);
        }
        csv.write(() -> BodyModelJson.csv(body), terminal());
        boolean nothing = body.model().answers().values().stream().noneMatch(Answer.Inferred.class::isInstance);
        return nothing ? ExitCode.NOTHING_USABLE : ExitCode.DONE;
    }

    private BodyRequest.Box box() {
        return new BodyRequest.Box(
                volumeLitres,
                Entry.figure("the hole's radius in mm", holeRadiusMm, 10, 75),
                Entry.figure("the top's thickness in mm", topThicknessMm, 0.5, 10));
    }
}
