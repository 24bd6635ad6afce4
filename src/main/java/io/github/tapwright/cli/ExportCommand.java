package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.exchange.ArchiveCsv;
import io.github.tapwright.exchange.ArchiveJson;
import io.github.tapwright.exchange.ExportFolder;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.statistics.Figures;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes what an archive knows for other programs. */
@Command(
        name = "export",
        description =
                "Writes instruments, sittings, resonances, notes, plucks, calibrations and blind listenings as CSV and JSON. Unknown cells are empty.")
final class ExportCommand extends ArchiveCommand {

    private enum Format {
        CSV,
        JSON,
        BOTH
    }

    @Parameters(paramLabel = "DIR", description = "Folder for the files; files of the same names are replaced.")
    private Path folder = Path.of("");

    @Option(names = "--format", paramLabel = "csv|json|both", description = "Which files to write; both if left out.")
    private Format format = Format.BOTH;

    ExportCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    @Override
    int run(OpenBench open) {
        List<Instrument> instruments = open.listInstruments().list();
        List<Sitting> sittings = open.listSittings().all().stream()
                .map(s -> open.showSitting().show(s.id()))
                .toList();
        List<KeptCalibration> calibrations = open.listCalibrations().all();
        List<ListeningSession> listenings = open.listListenings().all();
        Map<String, String> files = new TreeMap<>();
        if (format != Format.JSON) {
            files.putAll(ArchiveCsv.tables(instruments, sittings, calibrations, listenings));
        }
        if (format != Format.CSV) {
            files.put("archive.json", ArchiveJson.everything(instruments, sittings, calibrations, listenings));
        }
        Output.to(folder, () -> ExportFolder.write(folder, files));
        terminal()
                .say(
                        "Wrote %s and %s into %s: %s",
                        Figures.count(instruments.size(), "instrument"),
                        Figures.count(sittings.size(), "sitting"),
                        folder,
                        String.join(", ", files.keySet()));
        return ExitCode.DONE;
    }
}
