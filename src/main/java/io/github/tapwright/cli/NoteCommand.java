package io.github.tapwright.cli;

import io.github.tapwright.chart.NotePicture;
import io.github.tapwright.exchange.NoteJson;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.note.NoteName;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.sitting.AnalyseNotes;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Analyses recordings of single plucked notes without an archive. */
@Command(
        name = "note",
        description = "Measures plucked notes: pitch, partials, inharmonicity and decay; nothing is kept.",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        footer = {"", "One note a file; for many notes in one recording use fingerboard."})
final class NoteCommand implements Callable<Integer> {

    private final Bench bench;
    private final Terminal terminal;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Sound files, each of one plucked note.")
    private List<Path> files = List.of();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private TableOption csv = new TableOption();

    @Option(names = "--plot", paramLabel = "OUT", description = "Write the partials of one note as .png or .svg.")
    private Optional<Path> plot = Optional.empty();

    @Option(names = "--expect", paramLabel = "NOTE", description = "The note that was meant, such as E2 or Bb3.")
    private Optional<String> expected = Optional.empty();

    @Option(names = "--a4", paramLabel = "HZ", description = "Tuning note A4; 440 if left out.")
    private double a4Hz = NoteSettings.STANDARD.a4Hz();

    NoteCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (plot.isPresent()) {
            PictureOption.check(plot.get());
            if (files.size() > 1) {
                throw new RefusedEntryException("--plot draws one note; give one file");
            }
        }
        csv.refuseUnlessTable();
        List<AnalyseNotes.Found> found = bench.analyseNotes().analyse(files, settings(), terminal.progress());
        List<String> names = files.stream().map(Path::toString).toList();
        if (json) {
            terminal.print(NoteJson.each(names, found));
        } else {
            NoteText text = new NoteText(terminal);
            for (int i = 0; i < found.size(); i++) {
                text.print(names.get(i), found.get(i));
            }
        }
        csv.write(() -> NoteJson.csv(names, found), terminal);
        if (plot.isPresent()) {
            draw(String.valueOf(files.get(0).getFileName()), found.get(0).result(), plot.get());
        }
        boolean any = found.stream().anyMatch(f -> f.result().pitch().found().isPresent());
        return any ? ExitCode.DONE : ExitCode.NOTHING_USABLE;
    }

    private void draw(String name, NoteResult result, Path file) {
        Optional<NotePicture> picture = NotePicture.of(name, result);
        new PictureOption.Drawn(picture).write(file, terminal, "there are no partials");
    }

    private NoteSettings settings() {
        return Checked.entry(() -> {
            NoteSettings settings = NoteSettings.STANDARD.withA4(a4Hz);
            return expected.map(text -> settings.expecting(note(text))).orElse(settings);
        });
    }

    private static NoteName note(String text) {
        return NoteName.read(text)
                .orElseThrow(() -> new RefusedEntryException("'" + text
                        + "' is no note; write a letter, # or b if needed, and the octave, such as E2 or Bb3"));
    }
}
