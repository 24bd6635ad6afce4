package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SetUpSpread.Basis;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
            List<Map.Entry<PlayedQuantity, KnownScatter>> ofKind = known.entrySet().stream()
                    .filter(e -> e.getKey().kind() == kind && e.getValue().basis() == basis)
                    .toList();
            if (alike(ofKind)) {
                parts.add((kind == Quantity.LEVEL ? "levels" : "decay times") + " by " + figure(ofKind.get(0)));
            } else {
                ofKind.forEach(e -> parts.add(plural(e.getKey()) + " by " + figure(e)));
            }
        }
        return parts;
    }

    private static boolean alike(List<Map.Entry<PlayedQuantity, KnownScatter>> ofKind) {
        return ofKind.size() > 1
                && ofKind.stream().map(Map.Entry::getValue).distinct().count() == 1;
    }

    /** To a hundredth, as setting up is said. */
    private static String figure(Map.Entry<PlayedQuantity, KnownScatter> known) {
        PlayedQuantity quantity = known.getKey();
        double shown = PlayedWords.spread(quantity, known.getValue().deviation());
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
        return last < 1
                ? String.join("", parts)
                : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }
}
