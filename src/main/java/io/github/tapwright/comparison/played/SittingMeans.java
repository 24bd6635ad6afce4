package io.github.tapwright.comparison.played;

import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Summary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One quantity of every sitting of a study, over all strings, each string weighing the same; as a comparison of two would take it.
 *
 * @param means one for each sitting on the scale of comparison; the uncertainty is what its notes or plucks leave unsure
 * @param strings how many strings
 * @param figures how many places, or plucks of the sitting that has fewest
 */
record SittingMeans(List<Estimate> means, int strings, int figures) {

    /** Fewer plucks of a string say nothing of their scatter. */
    private static final int FEWEST_PLUCKS = 2;

    SittingMeans {
        means = List.copyOf(means);
    }

    /**
     * Of runs of notes, over the places all of them have.
     *
     * <p>σ² of a single note is what neither its place nor its string on that day explains: the sum of the squares of
     * x_ip − x̄_p − x̄_i,string + x̄_string over (k − 1)·(n − strings); u² = σ²·Σ(1/n_string)/strings². Source: [GUM], 4.2 and 4.3.1 (pooled scatter).
     */
    static Optional<SittingMeans> ofNotes(PlayedQuantity quantity, List<Fingerboard> runs) {
        List<Map<Fret, Double>> all =
                runs.stream().map(r -> NotePairs.byPlace(quantity, r)).toList();
        Map<Integer, List<Fret>> places =
                common(all).stream().collect(Collectors.groupingBy(Fret::string, TreeMap::new, Collectors.toList()));
        int count = places.values().stream().mapToInt(List::size).sum();
        int freedom = (runs.size() - 1) * (count - places.size());
        if (freedom < NotePairs.LEAST_FREEDOM) {
            return Optional.empty();
        }
        double squares =
                places.values().stream().mapToDouble(s -> unexplained(s, all)).sum();
        double perNote =
                places.values().stream().mapToDouble(s -> 1.0 / s.size()).sum();
        double u = Math.sqrt(squares / freedom * perNote) / places.size();
        List<Estimate> means = all.stream()
                .map(run -> new Estimate(
                        places.values().stream()
                                .mapToDouble(s -> mean(s, run))
                                .average()
                                .orElseThrow(),
                        u,
                        freedom))
                .toList();
        return Optional.of(new SittingMeans(means, places.size(), count));
    }

    private static TreeSet<Fret> common(List<Map<Fret, Double>> runs) {
        TreeSet<Fret> places = new TreeSet<>(runs.get(0).keySet());
        runs.forEach(run -> places.retainAll(run.keySet()));
        return places;
    }

    private static double mean(List<Fret> places, Map<Fret, Double> run) {
        return places.stream().mapToDouble(p -> at(p, run)).average().orElseThrow();
    }

    private static double at(Fret place, Map<Fret, Double> run) {
        return Optional.ofNullable(run.get(place)).orElseThrow();
    }

    /** The sum of squares on one string. */
    private static double unexplained(List<Fret> places, List<Map<Fret, Double>> runs) {
        double[] ofRun = runs.stream().mapToDouble(r -> mean(places, r)).toArray();
        double overall = Arrays.stream(ofRun).average().orElseThrow();
        double squares = 0;
        for (Fret place : places) {
            double atPlace =
                    runs.stream().mapToDouble(r -> at(place, r)).average().orElseThrow();
            for (int i = 0; i < ofRun.length; i++) {
                double rest = at(place, runs.get(i)) - atPlace - ofRun[i] + overall;
                squares += rest * rest;
            }
        }
        return squares;
    }

    /** Of plucks, over the strings every sitting plucked twice at least: u² = Σ(s²_string/n_string)/strings². */
    static Optional<SittingMeans> ofPlucks(PlayedQuantity quantity, List<PluckRun> runs) {
        List<Map<Integer, List<Double>>> all =
                runs.stream().map(r -> byString(quantity, r)).toList();
        TreeSet<Integer> strings = new TreeSet<>(all.get(0).keySet());
        all.forEach(run -> strings.removeIf(s -> of(s, run).size() < FEWEST_PLUCKS));
        if (strings.isEmpty()) {
            return Optional.empty();
        }
        List<Estimate> means = all.stream().map(run -> mean(strings, run)).toList();
        int fewest = all.stream()
                .mapToInt(
                        run -> strings.stream().mapToInt(s -> of(s, run).size()).sum())
                .min()
                .orElseThrow();
        return Optional.of(new SittingMeans(means, strings.size(), fewest));
    }

    private static List<Double> of(int string, Map<Integer, List<Double>> run) {
        return run.getOrDefault(string, List.of());
    }

    private static Estimate mean(TreeSet<Integer> strings, Map<Integer, List<Double>> run) {
        List<Summary> summaries = strings.stream()
                .map(s -> Summary.of(of(s, run).stream().mapToDouble(x -> x).toArray()))
                .toList();
        double sum = 0;
        double variance = 0;
        for (Summary s : summaries) {
            sum += s.mean();
            variance += s.standardDeviation() * s.standardDeviation() / s.count();
        }
        return Estimate.of(sum / strings.size(), Math.sqrt(variance) / strings.size());
    }

    private static Map<Integer, List<Double>> byString(PlayedQuantity quantity, PluckRun run) {
        Function<Pluck, Optional<Double>> of = PlayedComparison.figure(quantity);
        Map<Integer, List<Double>> values = new TreeMap<>();
        for (Pluck pluck : run.plucks()) {
            pluck.string()
                    .ifPresent(string -> of.apply(pluck)
                            .ifPresent(v -> values.computeIfAbsent(string, s -> new ArrayList<>())
                                    .add(v)));
        }
        return values;
    }
}
