package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.tap.TapSettings;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds a sitting. */
@Command(name = "add", description = "Keeps recordings of one visit to the microphone, and what they show.")
final class SittingAddCommand extends ArchiveCommand {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "NUMBER", description = "Shop number of the instrument.")
    private String number = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "Recordings, analysed as one set.")
    private List<Path> files = List.of();

    @Option(
            names = "--taken",
            paramLabel = "WHEN",
            description = "When they were made, as 2026-03-14 or 2026-03-14T09:26; now if left out.")
    private Optional<String> taken = Optional.empty();

    @Option(
            names = "--band",
            paramLabel = "LO:HI",
            converter = BandConverter.class,
            description = "Frequencies to report, in Hz; 60:1000 unless told otherwise.")
    private TapSettings settings = TapSettings.STANDARD;

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
                new ShopNumber(number), taken.map(t -> moment(t, zone)), conditions.conditions(), files, settings);
        Sitting sitting = open.addSitting().add(request, terminal().progress());
        if (json) {
            terminal().print(ArchiveJson.sitting(sitting));
        } else {
            new SittingText(terminal(), zone).print(sitting);
        }
        boolean found = !sitting.latest().result().resonances().isEmpty();
        if (!found) {
            terminal().note("the sitting is kept, but nothing usable was found in its recordings");
        }
        return found ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private Moment moment(String text, ZoneId zone) {
        try {
            return text.contains("T")
                    ? Moment.at(LocalDateTime.parse(text).atZone(zone).toInstant())
                    : Moment.on(LocalDate.parse(text), zone);
        } catch (DateTimeParseException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--taken is a day such as 2026-03-14 or 2026-03-14T09:26, not '" + text + "'",
                    e);
        }
    }
}
