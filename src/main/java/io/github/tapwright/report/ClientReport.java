package io.github.tapwright.report;

import io.github.tapwright.chart.FingerboardPicture;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.report.picture.FingerboardMaps;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.NearResonance;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A sitting in plain words, on one or two pages. */
final class ClientReport {

    private static final int MOST_FAST_NOTES = 8;

    private ClientReport() {}

    /** What was found, with a picture unless a comparison shows it beside another; {@link #close} follows. */
    static List<Section> findings(Matter matter, boolean drawnBeside) {
        Findings findings = matter.sitting().latest().findings();
        return findings.taps()
                .map(result -> new ClientTaps(matter, result).sections(!drawnBeside))
                .or(() -> findings.notes().map(board -> notes(matter, board, !drawnBeside)))
                .or(() -> findings.plucks().map(ClientReport::plucks))
                .orElse(List.of());
    }

    /** Room, limits and cautions. */
    static List<Section> close(Matter matter, List<String> alsoCannotTell) {
        return List.of(
                RoomAndSetUp.inBrief(matter.sitting().conditions()),
                WhatItTells.of(matter, alsoCannotTell),
                Cautions.section());
    }

    private static List<Section> notes(Matter matter, Fingerboard board, boolean withMaps) {
        List<Section> sections = new ArrayList<>();
        long placed = board.notes().stream().filter(n -> n.place().isPresent()).count();
        List<Node> words = new ArrayList<>();
        words.add(Words.paragraph(Figures.count(placed, "note") + " could be placed on the fingerboard, "
                + board.judged() + " of them with neighbours enough to be judged. " + standOut(board)));
        if (!board.fastDecays().isEmpty()) {
            words.add(Words.list(board.fastDecays().stream()
                    .limit(MOST_FAST_NOTES)
                    .map(f -> fast(f, board, matter))
                    .toList()));
        }
        sections.add(new Section("In short", words));
        Optional.of(board)
                .filter(b -> withMaps)
                .flatMap(FingerboardMaps::inShort)
                .ifPresent(p -> sections.add(Section.of(
                        "Over the fingerboard",
                        matter.pictures()
                                .figure(
                                        p,
                                        "Over the fingerboard, for each note: " + quantities(p),
                                        "Every square is a note, the highest string on top, the nut to the left. Darker is more. Framed: dies"
                                                + " away much faster than the frets around it. The level contains how hard each note was"
                                                + " plucked."))));
        return sections;
    }

    /** What its maps show, as their titles say it. */
    static String quantities(FingerboardPicture picture) {
        return picture.maps().stream().map(FingerboardPicture.FretMap::title).collect(Collectors.joining(", "));
    }

    private static String standOut(Fingerboard board) {
        int n = board.fastDecays().size();
        return n == 0
                ? "None of those dies away much faster than its neighbours."
                : (n == 1 ? "One dies" : n + " die") + " away much faster than the frets around"
                        + (n > MOST_FAST_NOTES ? "; the first " + MOST_FAST_NOTES + ":" : ":");
    }

    static String fast(FastDecay f, Fingerboard board, Matter matter) {
        Tuning tuning = board.settings().tuning();
        List<ShownResonance> resonances =
                matter.taps().map(t -> t.resonances(t.latest())).orElse(List.of());
        return "string " + f.place().string() + ", fret " + f.place().fret() + " ("
                + Figures.text(tuning.hz(f.place()), 1) + " Hz): " + Figures.text(f.decayTimeSeconds(), 2) + " s where "
                + Figures.text(f.usualSeconds(), 2) + " s are usual"
                + NearResonance.of(f, tuning, resonances)
                        .map(r -> "; near the body's " + r.name().orElse("resonance") + " at "
                                + Figures.text(r.frequencyHz().value(), 1) + " Hz")
                        .orElse("");
    }

    private static List<Section> plucks(PluckRun run) {
        Map<Integer, List<Pluck>> byString = run.plucks().stream()
                .filter(p -> p.string().isPresent() && p.lafMaxDb().isPresent())
                .collect(Collectors.groupingBy(p -> p.string().orElseThrow(), TreeMap::new, Collectors.toList()));
        Grid grid = Grid.of("string", "plucks", "middle (dB)", "softest (dB)", "loudest (dB)");
        byString.forEach((string, plucks) -> {
            DoubleSummaryStatistics levels =
                    plucks.stream().mapToDouble(p -> p.lafMaxDb().orElseThrow()).summaryStatistics();
            grid.add(
                    string.toString(),
                    Long.toString(levels.getCount()),
                    Figures.text(levels.getAverage(), 1),
                    Figures.text(levels.getMin(), 1),
                    Figures.text(levels.getMax(), 1));
        });
        String unit = run.withdrawn().isPresent()
                ? "dB by a calibration that was withdrawn: they tell strings apart, but not how loud the guitar is"
                : run.calibration().isPresent() ? "dB re 20 µPa" : "dB re full scale of the recording";
        return List.of(Section.of(
                "In short",
                Words.paragraph(Figures.count(run.plucks().size(), "pluck") + " recorded, "
                        + byString.values().stream().mapToInt(List::size).sum() + " of them of an open string."),
                grid.element(),
                Words.quiet("Largest A-weighted level, time weighting fast, in " + unit + ".")));
    }
}
