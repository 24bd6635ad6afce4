package io.github.tapwright.desktop.notes;

import io.github.tapwright.note.Finding;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.NearResonance;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Turns a run of notes into the cells of a map. */
final class Board {

    private final Fingerboard run;
    private final List<ShownResonance> body;
    private final Tuning tuning;

    Board(Fingerboard run, List<ShownResonance> body) {
        this.run = run;
        this.body = body;
        this.tuning = run.settings().tuning();
    }

    /** The cells that hold a note, the lowest string first; where a place was played twice, the last note. */
    List<BoardCell> cells(BoardQuantity quantity) {
        Map<Fret, Integer> places = new TreeMap<>();
        for (int i = 0; i < run.notes().size(); i++) {
            int note = i;
            run.notes().get(i).place().ifPresent(p -> places.put(p, note));
        }
        List<Double> figures = places.values().stream()
                .flatMap(n -> quantity.of(run.notes().get(n), tuning).found().stream())
                .toList();
        double least = figures.stream().mapToDouble(f -> f).min().orElse(0);
        double most = figures.stream().mapToDouble(f -> f).max().orElse(0);
        double middle = (least + most) / 2;
        double range = Math.max(quantity.leastRange(), most - least);
        return places.entrySet().stream()
                .map(e -> cell(e.getKey(), e.getValue(), quantity, middle - range / 2, range))
                .toList();
    }

    private BoardCell cell(Fret place, int note, BoardQuantity quantity, double low, double range) {
        Finding<Double> value = quantity.of(run.notes().get(note), tuning);
        Optional<String> dead = dead(place);
        String where = "String " + place.string() + ", fret " + place.fret() + ": ";
        String what = value.found()
                .map(v -> quantity.text(v) + " " + quantity.unit())
                .orElseGet(() -> "cannot tell: " + value.refusal().orElse(""));
        return new BoardCell(
                place,
                note,
                value.found().map(quantity::text).orElse("–"),
                value.found().map(v -> (v - low) / range),
                dead,
                where + what + dead.map(d -> "; " + d).orElse(""));
    }

    /** Why a place is framed. */
    Optional<String> dead(Fret place) {
        return run.fastDecays().stream()
                .filter(f -> f.place().equals(place))
                .findFirst()
                .map(this::reason);
    }

    private String reason(FastDecay f) {
        return "dies away much faster than the frets around: early decay "
                + Figures.text(f.decayTimeSeconds(), 2) + " s where " + Figures.text(f.usualSeconds(), 2)
                + " s are usual"
                + NearResonance.of(f, tuning, body)
                        .map(r -> "; near the body's " + r.name().orElse("resonance") + " at "
                                + Figures.text(r.frequencyHz().value(), 1) + " Hz, which may take its energy")
                        .orElse("");
    }

    /** What stands out in the run, in one paragraph. */
    String summary() {
        long placed = run.notes().stream().filter(n -> n.place().isPresent()).count();
        String found = Figures.count(run.notes().size(), "attack") + " found, " + placed
                + " of them notes on the fingerboard. ";
        if (run.judged() == 0) {
            return found + "No note could be judged for dying away too fast: that takes an early decay of the note and"
                    + " of four others within four frets on the same string.";
        }
        return found
                + (run.fastDecays().isEmpty()
                        ? "None of the " + run.judged() + " places that could be judged dies away much faster than its"
                                + " neighbours."
                        : run.fastDecays().size() + " of " + run.judged()
                                + " places that could be judged die away much faster than their neighbours: framed.");
    }
}
