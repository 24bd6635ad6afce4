package io.github.tapwright.cli;

import io.github.tapwright.exchange.TapFile;
import io.github.tapwright.exchange.TapsJson;
import io.github.tapwright.exchange.TapsJson.Single;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.sitting.AnalyseTaps;
import io.github.tapwright.sitting.SoundFacts;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.TapSettings;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Analyses tap recordings without an archive. */
@Command(
        name = "taps",
        description = "Finds strikes and resonances in tap recordings; nothing is kept.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class TapsCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Sound files of taps.")
    private List<Path> files = List.of();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Option(names = "--together", description = "Treat the files as one set: same instrument, same set-up.")
    private boolean together;

    @Option(names = "--plot", paramLabel = "OUT", description = "Write the response curve as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    @Option(
            names = "--hole",
            paramLabel = "open|covered|unknown",
            converter = HoleConverter.class,
            description = "Soundhole open or covered; decides which names are possible.")
    private HoleState hole = HoleState.UNKNOWN;

    /** Empty rather than the usual band, which the command line's library would write out at every start. */
    @Option(
            names = "--band",
            paramLabel = "LO:HI",
            converter = BandConverter.class,
            description = "Frequencies to report, in Hz; 60:1000 unless told otherwise.")
    private Optional<TapSettings> band = Optional.empty();

    TapsCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    /** Files analysed as one set, with what was found. */
    private record Set(List<TapFile> files, TapResult result) {

        List<String> names() {
            return files.stream().map(TapFile::name).toList();
        }

        String title() {
            return String.join(", ", names());
        }

        List<ResultText.Line> lines() {
            return result.resonances().stream().map(ResultText.Line::of).toList();
        }

        List<String> notices() {
            return files.stream()
                    .flatMap(f -> f.facts().notices().stream().map(n -> f.name() + ": " + n))
                    .toList();
        }
    }

    @Override
    public Integer call() {
        plot.ifPresent(PictureOption::check);
        List<Set> sets = analyse();
        if (json) {
            terminal.print(document(sets));
        } else {
            sets.forEach(this::print);
        }
        if (plot.isPresent()) {
            draw(sets, plot.get());
        }
        boolean found = sets.stream().anyMatch(s -> !s.result().resonances().isEmpty());
        if (!found) {
            terminal.note("nothing usable was found in " + (files.size() == 1 ? files.get(0) : "these files"));
        }
        return found ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private List<Set> analyse() {
        AnalyseTaps taps = bench.analyseTaps();
        TapSettings settings = band.orElse(TapSettings.STANDARD);
        if (together) {
            return List.of(set(files, taps.analyse(files, settings, hole, terminal.progress())));
        }
        List<AnalyseTaps.Found> found = taps.analyseEach(files, settings, hole, terminal.progress());
        return IntStream.range(0, files.size())
                .mapToObj(i -> set(List.of(files.get(i)), found.get(i)))
                .toList();
    }

    private static Set set(List<Path> files, AnalyseTaps.Found found) {
        return new Set(
                IntStream.range(0, files.size())
                        .mapToObj(i -> new TapFile(
                                files.get(i).toString(), found.facts().get(i)))
                        .toList(),
                found.result());
    }

    private String document(List<Set> sets) {
        return together
                ? TapsJson.together(sets.get(0).files(), sets.get(0).result())
                : TapsJson.each(sets.stream()
                        .map(s -> new Single(s.files().get(0), s.result()))
                        .toList());
    }

    private void print(Set set) {
        for (TapFile file : set.files()) {
            SoundFacts facts = file.facts();
            terminal.say(
                    "%s: %s, %s kHz, %s, %s s",
                    file.name(),
                    facts.format(),
                    Figures.plain(facts.sampleRateHz() / 1000),
                    channels(facts),
                    Figures.text(facts.durationSeconds(), 1));
        }
        new ResultText(terminal).print(set.names(), set.result(), set.lines(), set.notices());
        terminal.say("");
    }

    private static String channels(SoundFacts facts) {
        return facts.channelCount() == 1
                ? "1 channel"
                : facts.channelCount() + " channels, number " + (facts.channelUsed() + 1) + " analysed";
    }

    private void draw(List<Set> sets, Path file) {
        CurvePicture picture = new CurvePicture("Response to taps");
        sets.forEach(s -> picture.add(
                s.title(),
                s.result(),
                s.lines().stream()
                        .map(l -> CurvePicture.mark(l.resonance(), l.name()))
                        .toList()));
        boolean written = Output.tryTo(file, () -> picture.write(file));
        terminal.note(written ? "wrote " + file : "no picture written, because there is no curve to draw");
    }
}
