package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Sets a sitting aside, or takes it back. */
@Command(
        name = "set-aside",
        description = "Sets a sitting aside that should not have been kept, or takes it back.",
        footer = {
            "",
            "A sitting set aside is kept, listed, shown and exported with the reason. No comparison, group, trend,",
            "study, body model or report uses it; where it would have come along, the answer says that it was left out."
        })
final class SittingSetAsideCommand extends ArchiveCommand {

    private static final String BACK =
            "nothing is deleted; use it again with: tapwright sitting set-aside %s --take-back";

    @Parameters(paramLabel = "SITTING", converter = SittingIdConverter.class, description = "Number of the sitting.")
    private SittingId id = new SittingId(1);

    @Mixin
    private OutOfUseOptions options = new OutOfUseOptions();

    SittingSetAsideCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        SetSittingAside aside = open.setSittingAside();
        Sitting sitting = options.apply("sitting", why -> aside.setAside(id, why), () -> aside.takeBack(id));
        terminal()
                .say(
                        "Sitting %s of instrument %s, %s, %s",
                        sitting.id(),
                        sitting.instrument(),
                        sitting.takenAt().text(bench().clock().getZone()),
                        sitting.setAside()
                                .map(why ->
                                        "is set aside: " + why.reason() + String.format("%n  %s", BACK.formatted(id)))
                                .orElse("is in use again"));
        return ExitCode.DONE;
    }
}
