package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SetUpSpread.Basis;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What playing again moves, quantity by quantity, as people read it. */
final class AgainWords {

    private AgainWords() {}

    /** Those of one basis together: "decay times by 5 % and levels by 1 dB (assumed, not measured on this bench)". */
    static String of(Map<PlayedQuantity, KnownScatter> known) {
        return known.values().stream()
                .map(KnownScatter::basis)
                .distinct()
                .map(basis -> joined(parts(known, basis)) + " (" + basis.words() + ")")
                .collect(Collectors.joining("; "));
    }

    private static List<String> parts(Map<PlayedQuantity, KnownScatter> known, Basis basis) {
        List<String> parts = new ArrayList<>();
        for (Quantity kind : List.of(Quantity.DECAY_TIME, Quantity.LEVEL)) {
            Stream<PlayedQuantity> ofKind = known.keySet().stream().filter(q -> q.kind() == kind);
            List<PlayedQuantity> quantities =
                    ofKind.filter(q -> known.get(q).basis() == basis).toList();
            List<String> figures = quantities.stream()
                    .map(q -> figure(q, known.get(q).deviation()))
                    .toList();
            if (alike(known, quantities)) {
                parts.add((kind == Quantity.LEVEL ? "levels" : "decay times") + " by " + figures.get(0));
            } else {
                for (int i = 0; i < figures.size(); i++) {
                    parts.add(plural(quantities.get(i)) + " by " + figures.get(i));
                }
            }
        }
        return parts;
    }

    private static boolean alike(Map<PlayedQuantity, KnownScatter> known, List<PlayedQuantity> quantities) {
        return quantities.size() > 1
                && quantities.stream().map(known::get).distinct().count() == 1;
    }

    /** To a hundredth, as setting up is said. */
    private static String figure(PlayedQuantity quantity, double deviation) {
        double shown = PlayedWords.spread(quantity, deviation);
        return Figures.plain(Math.round(100 * shown) / 100.0) + " " + quantity.unit();
    }

    private static String plural(PlayedQuantity quantity) {
        return switch (quantity) {
            case EARLY_DECAY -> "early decays";
            case DECAY_TIME -> "decay times";
            case LEVEL -> "levels";
            case LOUDNESS -> "loudness";
            case PITCH -> "pitches";
        };
    }

    private static String joined(List<String> parts) {
        int last = parts.size() - 1;
        return last < 1 ? String.join("", parts) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }
}
