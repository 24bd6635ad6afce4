package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.comparison.TapSittings;
import io.github.tapwright.exchange.Workshop;
import io.github.tapwright.exchange.Workshop.Visit;
import io.github.tapwright.exchange.WorkshopJson;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.report.EditShop;
import io.github.tapwright.report.ReportKind;
import io.github.tapwright.report.ReportRequest;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Builds an archive from the invented workshop's recordings and says what is found in it. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Builds a demo archive from invented recordings and shows what is found in them.")
final class DemoCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Parameters(
            arity = "0..1",
            paramLabel = "DIR",
            defaultValue = "tapwright-demo",
            description = "A folder that is empty or does not exist yet; ${DEFAULT-VALUE} if left out.")
    private Path folder = Path.of("tapwright-demo");

    @Option(names = "--from", paramLabel = "DIR", description = "Folder of the recordings and their workshop.json.")
    private Optional<Path> from = Optional.empty();

    DemoCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Path recordings = from.orElse(bench.home().resolve("recordings-demo"));
        Path description = recordings.resolve("workshop.json");
        if (!Files.isRegularFile(description)) {
            throw new RefusedEntryException("there is no " + description + "; say with --from where the demo is");
        }
        refuseUsedFolder();
        Workshop workshop = WorkshopJson.read(description);
        terminal.say("INVENTED DATA. %s", workshop.remark());
        terminal.say("No instrument was measured. The story: %s in %s.", workshop.name(), workshop.place());
        List<SittingRequest> requests = workshop.visits().stream()
                .map(v -> request(workshop, v, recordings))
                .toList();
        List<Sitting> sittings = new ArrayList<>();
        Optional<Path> report;
        try (OpenBench open = bench.open(folder.resolve("archive"), true, terminal.progress())) {
            workshop.instruments().forEach(open.addInstrument()::add);
            for (SittingRequest request : requests) {
                sittings.add(open.addSitting().add(request, terminal.progress()));
            }
            report = writeReport(open, workshop, sittings);
        }
        DemoStory story = new DemoStory(terminal, workshop.zone());
        for (Instrument instrument : workshop.instruments()) {
            List<Sitting> own = sittings.stream()
                    .filter(s -> s.instrument().equals(instrument.shopNumber()))
                    .toList();
            story.tell(instrument, own);
            story.draw(instrument, own, folder.resolve("pictures"));
        }
        report.ifPresent(file -> terminal.say("%nClient report: %s", file));
        terminal.say("%nLook further with: tapwright sitting show 1 --archive %s", folder.resolve("archive"));
        boolean found = sittings.stream().anyMatch(s -> s.latest().findings().areUsable());
        return found ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    /** The client report of the latest usable sitting, under the invented workshop's name. */
    private Optional<Path> writeReport(OpenBench open, Workshop workshop, List<Sitting> sittings) {
        List<Sitting> usable = sittings.stream()
                .filter(s -> s.latest().findings().areUsable())
                .filter(s -> TapSittings.objection(SittingOutline.of(s)).isEmpty())
                .toList();
        if (usable.isEmpty()) {
            return Optional.empty();
        }
        open.editShop()
                .edit(new EditShop.Change(
                        Optional.of(workshop.name() + " (invented)"),
                        Optional.of(List.of(workshop.place())),
                        Optional.empty(),
                        false));
        Sitting latest = usable.get(usable.size() - 1);
        Output.to(folder, () -> Files.createDirectories(folder));
        Path file = folder.resolve("client-report.pdf");
        ReportSubject subject = new ReportSubject.OfSitting(latest.id());
        ReportRequest request =
                new ReportRequest(ReportKind.CLIENT, subject, bench.clock().instant());
        Output.to(file, () -> open.makeReport().write(request, file, terminal.progress()));
        return Optional.of(file);
    }

    private void refuseUsedFolder() {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw new RefusedEntryException(folder + " is not a folder; name a new one");
        }
        try (Stream<Path> content = Files.list(folder)) {
            if (content.findAny().isPresent()) {
                throw new RefusedEntryException(folder + " is not empty; name a new folder, so that nothing is mixed");
            }
        } catch (IOException e) {
            throw new RefusedEntryException(folder + " cannot be read; name a new folder");
        }
    }

    private static SittingRequest request(Workshop workshop, Visit visit, Path recordings) {
        return new SittingRequest(
                visit.instrument(),
                Optional.of(Moment.at(visit.taken().atZone(workshop.zone()).toInstant())),
                visit.conditions(),
                List.of(recordings.resolve(visit.file())),
                procedure(visit));
    }

    private static Procedure procedure(Visit visit) {
        return switch (visit.procedure()) {
            case Procedure.BodyTaps.KEY -> new Procedure.BodyTaps(TapSettings.STANDARD);
            case Procedure.NoteRun.KEY -> new Procedure.NoteRun(Fingerboard.Settings.STANDARD);
            default ->
                throw new RefusedEntryException("the sitting with " + visit.file() + " is for '" + visit.procedure()
                        + "'; a demo takes taps and notes");
        };
    }
}
