package io.github.tapwright.cli;

import io.github.tapwright.note.run.Fret;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why there is a dash in a table: every reason once, with the places it holds for. */
final class MissingFigures {

    private final Map<String, List<String>> placesByReason = new LinkedHashMap<>();

    void add(String reason, String place) {
        placesByReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(place);
    }

    /** A place on the fingerboard, as players write it. */
    void add(String reason, Fret place) {
        add(reason, "string " + place.string() + " fret " + place.fret());
    }

    /** One line for each reason; none if no figure is missing. */
    List<String> lines() {
        return placesByReason.entrySet().stream()
                .map(e -> "  – " + String.join(", ", e.getValue()) + ": " + e.getKey())
                .toList();
    }
}
