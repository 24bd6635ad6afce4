package io.github.tapwright.report.picture;

import io.github.tapwright.chart.FingerboardPicture;
import io.github.tapwright.chart.FingerboardPicture.Cell;
import io.github.tapwright.chart.FingerboardPicture.FretMap;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** From a run of notes to a picture of maps. */
public final class FingerboardMaps {

    private FingerboardMaps() {}

    /**
     * Maps of decay, level, pitch and centroid over string and fret.
     *
     * @param board the run of notes
     * @return empty if no note has a place
     */
    public static Optional<FingerboardPicture> of(Fingerboard board) {
        Tuning tuning = board.settings().tuning();
        List<FretMap> maps = decayAndLevel(board);
        add(maps, board, "Pitch off (cents)", 0, 10, n -> n.pitchErrorCents(tuning));
        add(maps, board, "Centroid (Hz)", 0, 200, n -> n.result().spectralCentroidHz());
        List<String> lines = List.of(
                Figures.count(board.notes().size(), "attack")
                        + " found; darker is more; framed: dies away much faster than the frets around",
                "the level contains the strength of each pluck");
        return picture("A run of notes over the fingerboard", lines, board, maps);
    }

    /**
     * The maps a client can read at a glance, decay and level, without a word above them.
     *
     * @param board the run of notes
     * @return empty if no note with a place has either
     */
    public static Optional<FingerboardPicture> inShort(Fingerboard board) {
        return picture("", List.of(), board, decayAndLevel(board));
    }

    private static Optional<FingerboardPicture> picture(
            String title, List<String> lines, Fingerboard board, List<FretMap> maps) {
        int strings = board.settings().tuning().openHz().size();
        return maps.isEmpty() ? Optional.empty() : Optional.of(new FingerboardPicture(title, lines, strings, maps));
    }

    private static List<FretMap> decayAndLevel(Fingerboard board) {
        List<FretMap> maps = new ArrayList<>();
        add(maps, board, "Early decay (s)", 1, 0.5, Fingerboard.Note::earlyDecayTimeSeconds);
        add(maps, board, "LAFmax (dB re full scale)", 0, 3, Fingerboard.Note::lafMaxDb);
        return maps;
    }

    private static void add(
            List<FretMap> maps,
            Fingerboard board,
            String title,
            int places,
            double leastRange,
            Function<Fingerboard.Note, Finding<Double>> value) {
        Set<Fret> fast = board.fastDecays().stream().map(FastDecay::place).collect(Collectors.toSet());
        TreeMap<Fret, Cell> cells = new TreeMap<>();
        for (Fingerboard.Note note : board.notes()) {
            note.place()
                    .ifPresent(at -> value.apply(note)
                            .found()
                            .ifPresent(v -> cells.put(at, new Cell(at.string(), at.fret(), v, fast.contains(at)))));
        }
        if (!cells.isEmpty()) {
            maps.add(new FretMap(title, places, leastRange, List.copyOf(cells.values())));
        }
    }
}
