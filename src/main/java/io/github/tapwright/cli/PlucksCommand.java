package io.github.tapwright.cli;

import io.github.tapwright.comparison.PluckComparison;
import io.github.tapwright.exchange.PlucksJson;
import io.github.tapwright.level.LevelSettings;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.MeasurePlucks;
import io.github.tapwright.sitting.Pluck;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measures repeated plucks of the open strings, and compares two instruments by them. */
@Command(
        name = "plucks",
        description = "Measures how loud repeated plucks of the open strings are; compares two instruments.",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        footer = {
            "",
            "A finger never plucks twice alike. A thin copper wire looped round the string and pulled until it breaks",
            "lets go at nearly the same force every time. The wire and the string can whip: wear eye protection and",
            "keep faces away. Ten plucks a string, same microphone, place and gain for both instruments."
        })
final class PlucksCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Recordings of the first instrument.")
    private List<Path> first = List.of();

    @Option(
            names = "--against",
            arity = "1..*",
            paramLabel = "FILE",
            description = "Recordings of the second instrument, same set-up.")
    private List<Path> second = List.of();

    @ArgGroup
    private CalibrationChoice calibration = new CalibrationChoice();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Mixin
    private TuningOptions tuning = new TuningOptions();

    PlucksCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        tuning.refuseFrets();
        Optional<AppliedCalibration> applied = calibration.find(bench, archive.folder(), terminal);
        LevelSettings settings =
                applied.map(c -> LevelSettings.calibrated(c.calibration())).orElse(LevelSettings.RELATIVE);
        PlucksJson.Side sideA = measured(first, settings);
        PlucksJson.Side sideB = measured(second, settings);
        List<Pluck> a = sideA.plucks();
        List<Pluck> b = sideB.plucks();
        List<PluckComparison> comparisons = b.isEmpty() ? List.of() : comparisons(a, b);
        String unit = settings.reference().unit();
        if (json) {
            terminal.print(PlucksJson.of(sideA, sideB, comparisons, unit));
        } else {
            applied.ifPresent(c -> new CalibrationText(terminal, bench.clock().getZone()).print(c));
            PlucksText text = new PlucksText(terminal, unit);
            text.print(a, b, comparisons);
            text.printRemarks(Stream.concat(sideA.remarks().stream(), sideB.remarks().stream())
                    .toList());
        }
        boolean heard = a.stream().anyMatch(p -> p.string().isPresent())
                && (second.isEmpty() || b.stream().anyMatch(p -> p.string().isPresent()));
        if (!heard) {
            terminal.note(
                    "no pluck of an open string was found in " + (second.isEmpty() ? "the recording" : "A or in B")
                            + "; check the tuning given, and that one string sounds at a time");
        }
        return heard ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private PlucksJson.Side measured(List<Path> files, LevelSettings settings) {
        List<String> names = files.stream().map(Path::toString).toList();
        MeasurePlucks.Measured measured = files.isEmpty()
                ? new MeasurePlucks.Measured(List.of(), List.of())
                : bench.measurePlucks().measure(files, tuning.tuning(), settings, terminal.progress());
        List<String> remarks = new ArrayList<>();
        for (int f = 0; f < names.size(); f++) {
            String name = names.get(f);
            measured.facts().get(f).remarks().forEach(r -> remarks.add(name + ": " + r));
        }
        return new PlucksJson.Side(names, measured.plucks(), remarks);
    }

    private static List<PluckComparison> comparisons(List<Pluck> a, List<Pluck> b) {
        List<PluckComparison> comparisons = new ArrayList<>();
        comparisons.add(PluckComparison.of("LAFmax, dB(A)", Optional.of(1.0), a, b, Pluck::lafMaxDb));
        comparisons.add(PluckComparison.of("momentary loudness, LU", Optional.of(1.0), a, b, Pluck::momentaryMaxLufs));
        if (a.stream().anyMatch(p -> p.maximumSone().isPresent())) {
            comparisons.add(PluckComparison.of("loudness, sone", Optional.empty(), a, b, Pluck::maximumSone));
        }
        return comparisons;
    }
}
