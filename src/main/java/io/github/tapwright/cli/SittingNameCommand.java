package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Names a resonance; the maker's word holds against any suggestion. */
@Command(
        name = "name",
        description = "Says what a resonance of a sitting is; your word holds against any suggestion.",
        footer = {"", "Known names: main air, main top, main back, cross dipole, long dipole. Others are kept as given."
        })
final class SittingNameCommand extends ArchiveCommand {

    @Parameters(
            index = "0",
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "Number of the sitting.")
    private SittingId id = new SittingId(1);

    @ArgGroup(multiplicity = "1")
    private Where where = new Where();

    @Parameters(index = "1", arity = "0..1", paramLabel = "NAME", description = "The name; none if left out.")
    private Optional<String> name = Optional.empty();

    SittingNameCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    /** Which resonance: its number in the list, or its frequency. */
    static final class Where {

        @Option(names = "--number", paramLabel = "N", description = "Number of the resonance in the sitting's list.")
        private Optional<Integer> ordinal = Optional.empty();

        @Option(names = "--frequency", paramLabel = "HZ", description = "Where the resonance lies, in Hz.")
        private Optional<Double> frequencyHz = Optional.empty();
    }

    @Override
    int run(OpenBench open) {
        Sitting sitting = where.ordinal
                .map(n -> open.nameResonance().atOrdinal(id, n, name))
                .orElseGet(() -> open.nameResonance().atFrequency(id, where.frequencyHz.orElseThrow(), name));
        new SittingText(terminal(), bench().clock().getZone()).print(sitting, Optional.empty());
        return ExitCode.DONE;
    }
}
