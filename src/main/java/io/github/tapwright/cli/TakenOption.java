package io.github.tapwright.cli;

import io.github.tapwright.sitting.Moment;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** When recordings were made. */
final class TakenOption {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--taken",
            paramLabel = "WHEN",
            description =
                    "When it was recorded, as 2026-03-14 or 2026-03-14T09:26; if left out: now, or in an edit as it was.")
    private Optional<String> taken = Optional.empty();

    /** The moment the maker gave, by the clocks of a zone; empty if none was given. */
    Optional<Moment> moment(ZoneId zone) {
        return taken.map(text -> moment(text, zone));
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
