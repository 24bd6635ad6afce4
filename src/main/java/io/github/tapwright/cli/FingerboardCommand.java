package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.FingerboardJson;
import io.github.tapwright.report.picture.FingerboardMaps;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lays a run of notes over the fingerboard. */
@Command(
        name = "fingerboard",
        description = "Cuts a run of notes, gives each its string and fret, and points out dead notes.",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        footer = {
            "",
            "Play string by string from the open note up, or a scale with --order lowest-fret. Let every note ring",
            "for two seconds or more, and stop it before the next. A string under tension can break and whip:",
            "protect your eyes."
        })
final class FingerboardCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Sound files in the order played.")
    private List<Path> files = List.of();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private TableOption csv = new TableOption();

    @Option(names = "--plot", paramLabel = "OUT", description = "Write maps of the fingerboard as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    @Mixin
    private TuningOptions tuning = new TuningOptions();

    @Mixin
    private OrderOption order = new OrderOption();

    @Option(
            names = "--sitting",
            paramLabel = "ID",
            converter = SittingIdConverter.class,
            description = "A sitting of taps on this instrument: dead notes are held against its resonances.")
    private Optional<SittingId> sitting = Optional.empty();

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    FingerboardCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        plot.ifPresent(PictureOption::check);
        csv.refuseUnlessTable();
        Fingerboard.Settings settings = settings();
        List<ShownResonance> resonances = sitting.isPresent() ? resonances(sitting.get()) : List.of();
        Fingerboard board = bench.mapFingerboard().map(files, settings, terminal.progress());
        List<String> names = files.stream().map(Path::toString).toList();
        FingerboardJson written = new FingerboardJson(names, board, resonances);
        if (json) {
            terminal.print(written.document());
        } else {
            new FingerboardText(terminal).print(names, board, resonances);
        }
        csv.write(() -> written.csv(), terminal);
        if (plot.isPresent()) {
            new PictureOption.Drawn(FingerboardMaps.of(board)).write(plot.get(), terminal, "no note has a place");
        }
        boolean any = board.notes().stream().anyMatch(n -> n.place().isPresent());
        return any ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private List<ShownResonance> resonances(SittingId id) {
        try (OpenBench open = bench.open(archive.folder(), false, terminal.progress())) {
            Sitting tapped = open.showSitting().use(id).requireTaps();
            return tapped.resonances(tapped.latest());
        }
    }

    private Fingerboard.Settings settings() {
        return new Fingerboard.Settings(tuning.tuning(), order.order(), tuning.noteSettings());
    }
}
