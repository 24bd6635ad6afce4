package io.github.tapwright.report;

import io.github.tapwright.chart.FingerboardPicture;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.report.picture.FingerboardMaps;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What runs of notes and plucks found, with every number. */
final class WorkshopNotes {

    private static final String NONE = "–";

    private WorkshopNotes() {}

    static List<Section> sections(Matter matter, Fingerboard board) {
        List<Section> sections = new ArrayList<>();
        FingerboardMaps.of(board)
                .map(p -> new FingerboardPicture("", List.of(), p.stringCount(), p.maps()))
                .ifPresent(
                        p -> sections.add(
                                Section.of(
                                        "Fingerboard",
                                        matter.pictures()
                                                .figure(
                                                        p,
                                                        "Maps of the fingerboard",
                                                        ClientReport.quantities(p)
                                                                + " over string and fret; darker is more; framed: dies"
                                                                + " away much faster than the frets around. The level contains the strength of each pluck."))));
        if (!board.fastDecays().isEmpty()) {
            sections.add(Section.of(
                    "Dying away fast",
                    Words.list(board.fastDecays().stream()
                            .map(f -> ClientReport.fast(f, board, matter))
                            .toList())));
        }
        sections.add(Section.of("Notes", notes(board).element()));
        if (!board.warnings().isEmpty()) {
            sections.add(Section.of("Warnings", Words.list(board.warnings())));
        }
        return sections;
    }

    private static Grid notes(Fingerboard board) {
        Tuning tuning = board.settings().tuning();
        Grid grid = Grid.of(
                "no.",
                "file",
                "time (s)",
                "place|",
                "pitch (Hz)",
                "off (cents)",
                "early decay (s)",
                "decay (s)",
                "LAFmax (dB)",
                "centroid (Hz)");
        int number = 0;
        for (Fingerboard.Note n : board.notes()) {
            number++;
            grid.add(
                    Integer.toString(number),
                    Integer.toString(n.file() + 1),
                    Figures.text(n.attackSeconds(), 2),
                    n.place().map(p -> p.string() + "/" + p.fret()).orElse("none"),
                    n.result()
                            .pitch()
                            .found()
                            .map(Pitch::hz)
                            .map(hz -> Figures.text(hz, 3))
                            .orElse(NONE),
                    figure(n.pitchErrorCents(tuning), 0),
                    figure(n.earlyDecayTimeSeconds(), 2),
                    figure(n.decayTimeSeconds(), 2),
                    figure(n.lafMaxDb(), 1),
                    figure(n.result().spectralCentroidHz(), 0));
        }
        return grid;
    }

    private static String figure(Finding<Double> finding, int places) {
        return finding.found().map(v -> Figures.text(v, places)).orElse(NONE);
    }

    static List<Section> plucks(PluckRun run) {
        Grid grid = Grid.of(
                "no.", "file", "time (s)", "string", "LAFmax (dB)", "momentary (LUFS)", "loudness (sone)", "remarks|");
        int number = 0;
        for (Pluck p : run.meaningful()) {
            number++;
            grid.add(
                    Integer.toString(number),
                    Integer.toString(p.file() + 1),
                    Figures.text(p.attackSeconds(), 2),
                    p.string().map(Object::toString).orElse(NONE),
                    figure(p.lafMaxDb()),
                    figure(p.momentaryMaxLufs()),
                    figure(p.maximumSone()),
                    p.string().isEmpty() ? "no open string, left out" : String.join("; ", p.warnings()));
        }
        return List.of(Section.of("Plucks", grid.element(), Words.quiet("Levels in " + run.levelUnit() + ".")));
    }

    private static String figure(Optional<Double> value) {
        return value.map(v -> Figures.text(v, 1)).orElse(NONE);
    }
}
