package io.github.tapwright.cli;

import io.github.tapwright.sitting.ConditionLine;
import io.github.tapwright.sitting.Conditions;
import java.util.stream.Collectors;

/** The conditions of a sitting in words. */
final class ConditionsText {

    private ConditionsText() {}

    /** What is known on one line, such as "strung; 21 °C; 47 % relative humidity; soundhole open". */
    static String line(Conditions conditions) {
        String known = ConditionLine.of(conditions).stream()
                .flatMap(c -> c.spoken().stream())
                .collect(Collectors.joining("; "));
        return known.isEmpty() ? "nothing written down" : known;
    }
}
