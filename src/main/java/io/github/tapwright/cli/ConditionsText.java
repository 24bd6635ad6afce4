package io.github.tapwright.cli;

import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.sitting.ConditionLine;
import io.github.tapwright.sitting.Conditions;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

    /** What strings that are off now took with them, in words. */
    static Optional<String> takenOff(Conditions before, Conditions after) {
        Strings was = before.strings();
        boolean tookAny = was.setName().isPresent() || was.fittedOn().isPresent();
        if (!tookAny || !after.strings().state().equals(Optional.of(StringState.OFF))) {
            return Optional.empty();
        }
        String taken = Stream.of(
                        was.setName().map(set -> "string set " + set),
                        was.fittedOn().map(day -> "strings fitted on " + day))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" and "));
        return Optional.of("strings that are off have no set and no day: taken back, " + taken);
    }
}
