package io.github.tapwright.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One name with the figures of every curve on which a resonance bears it.
 *
 * @param name the name
 * @param peaks its peaks in the order of the curves, as the legend and every table have them; at least one
 */
record NameBlock(String name, List<MarkedPeak> peaks) {

    private static final int GAP = 10;

    /** The blocks of all named peaks, lowest frequency first. */
    static List<NameBlock> of(List<MarkedPeak> peaks) {
        Map<String, List<MarkedPeak>> byName = new LinkedHashMap<>();
        peaks.stream()
                .filter(MarkedPeak::named)
                .forEach(p -> byName.computeIfAbsent(p.mark().name(), n -> new ArrayList<>())
                        .add(p));
        return byName.entrySet().stream()
                .map(e -> new NameBlock(
                        e.getKey(),
                        e.getValue().stream()
                                .sorted(Comparator.comparingInt(MarkedPeak::curve))
                                .toList()))
                .toList();
    }

    /** Where its leader stands: the lowest of its frequencies. */
    MarkedPeak anchor() {
        return peaks.stream()
                .min(Comparator.comparingDouble(p -> p.mark().frequencyHz()))
                .orElseThrow();
    }

    /** Width with the gap beside it, pixels. */
    double width() {
        double figures =
                peaks.stream().mapToDouble(MarkedPeak::figureWidth).max().orElse(0);
        return Math.max(Look.width(Look.NAME, name), figures) + GAP;
    }

    /** Height with the gap below it, pixels. */
    int height() {
        return 19 + 13 * peaks.size();
    }
}
