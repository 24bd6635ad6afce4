package io.github.tapwright.report.picture;

import io.github.tapwright.chart.FingerboardPicture;
import io.github.tapwright.chart.FingerboardPicture.Cell;
import io.github.tapwright.chart.FingerboardPicture.FretMap;
import io.github.tapwright.comparison.played.AtPlace;
import io.github.tapwright.comparison.played.PlayedChange;
import io.github.tapwright.comparison.played.PlayedComparison;
import io.github.tapwright.comparison.played.PlayedQuantity;
import io.github.tapwright.note.run.Fret;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** From two runs of notes to a picture of where they differ. */
public final class PlayedMaps {

    private static final double LEAST_RANGE_PERCENT = 20;
    private static final double LEAST_RANGE = 3;

    private PlayedMaps() {}

    /**
     * Maps of the difference of every quantity that may be shown, over string and fret.
     *
     * @param comparison of two runs of notes
     * @return empty if no note was played at the same place in both, as with plucks
     */
    public static Optional<FingerboardPicture> of(PlayedComparison comparison) {
        return picture("Two runs of notes, B minus A", subtitles(comparison), comparison, q -> true);
    }

    /**
     * The maps for a page, whose words say what they show.
     *
     * @param comparison of two runs of notes
     * @param wanted which quantities
     * @return empty if no wanted quantity may be shown, or no note was played at the same place in both
     */
    public static Optional<FingerboardPicture> onPage(PlayedComparison comparison, Predicate<PlayedQuantity> wanted) {
        return picture("", List.of(), comparison, wanted);
    }

    private static Optional<FingerboardPicture> picture(
            String title, List<String> lines, PlayedComparison comparison, Predicate<PlayedQuantity> wanted) {
        Set<Fret> fast = comparison.fastNotes().stream().map(f -> f.place()).collect(Collectors.toSet());
        List<FretMap> maps = comparison.changes().stream()
                .filter(c ->
                        wanted.test(c.quantity()) && c.shown() && !c.places().isEmpty())
                .map(c -> map(c, fast))
                .toList();
        return maps.isEmpty()
                ? Optional.empty()
                : Optional.of(new FingerboardPicture(title, lines, strings(comparison), maps));
    }

    private static FretMap map(PlayedChange change, Set<Fret> fast) {
        String unit = change.quantity().unit();
        return new FretMap(
                change.quantity().words() + (unit.equals("%") ? " (% of A's)" : " (" + unit + ")"),
                0,
                unit.equals("%") ? LEAST_RANGE_PERCENT : LEAST_RANGE,
                change.places().stream()
                        .map(p -> new Cell(
                                p.place().string(), p.place().fret(), p.difference(), fast.contains(p.place())))
                        .toList());
    }

    private static List<String> subtitles(PlayedComparison comparison) {
        List<String> lines = new ArrayList<>();
        lines.add("darker is more in B; framed: dies away much faster than the frets around, in A or in B");
        comparison
                .comparability()
                .despite()
                .ifPresent(why -> lines.add("compared although the conditions forbid it: " + why));
        return lines;
    }

    private static int strings(PlayedComparison comparison) {
        return comparison.changes().stream()
                .flatMap(c -> c.places().stream())
                .map(AtPlace::place)
                .mapToInt(Fret::string)
                .max()
                .orElse(1);
    }
}
