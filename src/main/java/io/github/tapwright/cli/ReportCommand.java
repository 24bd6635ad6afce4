package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupSettings;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.MakeReport;
import io.github.tapwright.report.ReportKind;
import io.github.tapwright.report.ReportRequest;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.SittingId;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a report as PDF or HTML. */
@Command(
        name = "report",
        description = "Writes a report of a sitting, of an instrument over time, or of groups, as PDF or HTML.",
        footer = {
            "",
            "A client report says in plain words what was found, how sure it is and what it cannot tell. A workshop report",
            "holds every number, setting and hash. What stands at its head is set with: tapwright shop edit"
        })
final class ReportCommand extends ArchiveCommand {

    @Parameters(
            arity = "0..1",
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "Number of the sitting.")
    private Optional<SittingId> sitting = Optional.empty();

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            converter = KeyConverters.ForWhom.class,
            description = "client or workshop; client if left out.")
    private ReportKind kind = ReportKind.CLIENT;

    @Option(
            names = "--against",
            paramLabel = "SITTING",
            converter = SittingIdConverter.class,
            description = "An earlier sitting to compare with: taps with taps, notes with notes, plucks with plucks.")
    private Optional<SittingId> against = Optional.empty();

    @Option(names = "--trend", paramLabel = "INSTRUMENT", description = "Report an instrument over time instead.")
    private Optional<String> trend = Optional.empty();

    @Option(
            names = "--group",
            paramLabel = "BY",
            converter = KeyConverters.Grouping.class,
            description = "Report groups by construction or kind instead.")
    private Optional<GroupBy> group = Optional.empty();

    @Option(
            names = "--stage",
            paramLabel = "CLASS",
            converter = KeyConverters.Strung.class,
            description = "Groups: sittings strung or unstrung; strung if left out.")
    private Optional<StageClass> stage = Optional.empty();

    @Option(
            names = "--spread",
            paramLabel = "%F:%Q:DB",
            converter = SpreadConverter.class,
            description =
                    "For a sitting of taps, --against or --trend, spread of setting up: frequency in %%, Q in %%, level in dB; the study kept by repeatability, else 0.3:5:1, if left out.")
    private Optional<SetUpSpread> spread = Optional.empty();

    @Option(
            names = "--despite",
            paramLabel = "REASON",
            description = "With --against, show refused figures too; the reason stays on the report.")
    private Optional<String> despite = Optional.empty();

    @Option(
            names = "--shop-window",
            paramLabel = "LO:HI",
            converter = WindowConverter.class,
            description = "With --against or --trend, relative humidity the shop keeps, %%; 40:50 if left out.")
    private Optional<ShopWindow> window = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Where to, .pdf or .html; report.pdf in this folder if left out.")
    private Path out = Path.of("report.pdf");

    ReportCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        MakeReport.requireKnownEnding(out);
        Given.refuse(
                spread.isPresent()
                        && against.isEmpty()
                        && sitting.filter(id -> open.comparePlayed().takes(id)).isPresent(),
                "--spread goes with a sitting of taps, --against or --trend; leave it out");
        ReportRequest request =
                new ReportRequest(kind, subject(), bench().clock().instant());
        Optional<String> nothingUsable = Output.tryTo(
                out, () -> open.makeReport().write(request, out, terminal().progress()));
        terminal().note("wrote " + out);
        nothingUsable.ifPresent(why -> terminal().note("nothing usable stands in it: " + why));
        return nothingUsable.isEmpty() ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private ReportSubject subject() {
        long asked =
                Stream.of(sitting, trend, group).filter(Optional::isPresent).count();
        if (asked != 1) {
            throw new RefusedEntryException(
                    "give one of: the number of a sitting, --trend INSTRUMENT, --group construction");
        }
        refuseWhatTheSubjectDoesNotUse();
        ShopWindow kept = window.orElse(ShopWindow.USUAL);
        if (trend.isPresent()) {
            return new ReportSubject.OfHistory(new ShopNumber(trend.get()), spread, kept);
        }
        if (group.isPresent()) {
            return new ReportSubject.OfGroups(new GroupSettings(group.get(), stage.orElse(StageClass.STRUNG)));
        }
        SittingId id = sitting.orElseThrow();
        return against.<ReportSubject>map(
                        a -> new ReportSubject.OfTwo(id, a, new CompareSittings.Settings(spread, kept, despite)))
                .orElseGet(() -> new ReportSubject.OfSitting(id, spread));
    }

    private void refuseWhatTheSubjectDoesNotUse() {
        boolean overTimeOrTwo = trend.isPresent() || against.isPresent();
        Given.refuse(
                against.isPresent() && sitting.isEmpty(), "--against goes with the number of a sitting; leave it out");
        Given.refuse(stage.isPresent() && group.isEmpty(), "--stage goes with --group; leave it out");
        Given.refuse(despite.isPresent() && against.isEmpty(), "--despite goes with --against; leave it out");
        Given.refuse(
                spread.isPresent() && group.isPresent(),
                "--spread goes with a sitting of taps, --against or --trend; leave it out");
        Given.refuse(
                window.isPresent() && !overTimeOrTwo,
                "--shop-window goes with --against or --trend; leave it out, or say what to compare with");
    }
}
