package io.github.tapwright.comparison.played;

import io.github.tapwright.note.Finding;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.statistics.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Notes that were played at the same place in both runs, and how one figure of them differs.
 *
 * <p>d_i = x_i(B) − x_i(A) at place i, logarithms for decay times; a place played twice counts with its mean. All strings are taken to
 * scatter alike: s² = Σ(d_i − d̄_string)²/(n − k) over n places on k strings, u(string) = s/√n_string, and over all strings, each
 * weighing the same, u² = s²·Σ(1/n_string)/k², with ν = n − k. Source: [GUM], 4.2 and 4.3.1 (pooled scatter).
 *
 * @param ofString the differences, by string and then in the order of the frets
 */
record NotePairs(Map<Integer, List<Both>> ofString) {

    static final int LEAST_FREEDOM = 3;

    /** One place, on the scale of comparison. */
    record Both(Fret place, double first, double second) {

        double difference() {
            return second - first;
        }
    }

    static NotePairs of(PlayedQuantity quantity, Fingerboard first, Fingerboard second) {
        Map<Fret, Double> before = byPlace(quantity, first);
        Map<Fret, Double> after = byPlace(quantity, second);
        Map<Integer, List<Both>> pairs = new TreeMap<>();
        before.forEach((place, a) -> Optional.ofNullable(after.get(place))
                .ifPresent(b -> pairs.computeIfAbsent(place.string(), s -> new ArrayList<>())
                        .add(new Both(place, a, b))));
        return new NotePairs(pairs);
    }

    /** Every place with a figure, on the scale of comparison. */
    static Map<Fret, Double> byPlace(PlayedQuantity quantity, Fingerboard board) {
        Map<Fret, List<Double>> figures = new TreeMap<>();
        for (Fingerboard.Note note : board.notes()) {
            note.place()
                    .ifPresent(place -> figure(quantity, board, note)
                            .found()
                            .ifPresent(f -> figures.computeIfAbsent(place, p -> new ArrayList<>())
                                    .add(quantity.onScale(f))));
        }
        return figures.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> mean(e.getValue()), (a, b) -> a, TreeMap::new));
    }

    private static Finding<Double> figure(PlayedQuantity quantity, Fingerboard board, Fingerboard.Note note) {
        return switch (quantity) {
            case EARLY_DECAY -> note.earlyDecayTimeSeconds();
            case DECAY_TIME -> note.decayTimeSeconds();
            case LEVEL -> note.lafMaxDb();
            case PITCH -> note.pitchErrorCents(board.settings().tuning());
            case LOUDNESS -> new Finding.NotFound<>("runs of notes are not measured for it");
        };
    }

    private static double mean(List<Double> figures) {
        return figures.stream().mapToDouble(f -> f).average().orElseThrow();
    }

    private int count() {
        return ofString.values().stream().mapToInt(List::size).sum();
    }

    private int freedom() {
        return count() - ofString.size();
    }

    private double variance() {
        double squares = 0;
        for (List<Both> string : ofString.values()) {
            double mean = meanOf(string, Both::difference);
            squares += string.stream()
                    .mapToDouble(b -> (b.difference() - mean) * (b.difference() - mean))
                    .sum();
        }
        return squares / freedom();
    }

    private static double meanOf(List<Both> string, ToDoubleFunction<Both> of) {
        return string.stream().mapToDouble(of).average().orElseThrow();
    }

    List<AtPlace> places(PlayedQuantity quantity) {
        return ofString.values().stream()
                .flatMap(List::stream)
                .map(b -> new AtPlace(
                        b.place(),
                        quantity.figure(b.first()),
                        quantity.figure(b.second()),
                        quantity.inUnit(b.difference())))
                .toList();
    }

    List<OnString> strings(PlayedQuantity quantity) {
        return ofString.entrySet().stream()
                .map(e -> new OnString(
                        e.getKey(),
                        e.getValue().size(),
                        e.getValue().size(),
                        quantity.figure(meanOf(e.getValue(), Both::first)),
                        quantity.figure(meanOf(e.getValue(), Both::second)),
                        difference(e.getValue())))
                .toList();
    }

    private Optional<Estimate> difference(List<Both> string) {
        return freedom() < LEAST_FREEDOM
                ? Optional.empty()
                : Optional.of(new Estimate(
                        meanOf(string, Both::difference), Math.sqrt(variance() / string.size()), freedom()));
    }

    /** Over all strings; empty where too few notes tell how far they scatter. */
    Optional<Estimate> overall() {
        if (freedom() < LEAST_FREEDOM) {
            return Optional.empty();
        }
        int strings = ofString.size();
        double mean = ofString.values().stream()
                .mapToDouble(s -> meanOf(s, Both::difference))
                .average()
                .orElseThrow();
        double perNote =
                ofString.values().stream().mapToDouble(s -> 1.0 / s.size()).sum();
        return Optional.of(new Estimate(mean, Math.sqrt(variance() * perNote) / strings, freedom()));
    }
}
