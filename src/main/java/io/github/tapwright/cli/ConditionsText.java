package io.github.tapwright.cli;

import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The conditions of a sitting in words. */
final class ConditionsText {

    private ConditionsText() {}

    /** A condition with its words. */
    private record Named(String name, Optional<String> words) {}

    /** What is known on one line, such as "strung; 21 °C; 47 % relative humidity; soundhole open". */
    static String line(Conditions conditions) {
        String known = all(conditions)
                .flatMap(c -> c.words.stream().map(w -> plainSpeech(c.name, w)))
                .collect(Collectors.joining("; "));
        return known.isEmpty() ? "nothing written down" : known;
    }

    private static Stream<Named> all(Conditions c) {
        return Stream.of(
                new Named("stage", c.stage().map(Stage::words)),
                new Named("temperature", c.air().temperatureCelsius().map(t -> Figures.plain(t) + " °C")),
                new Named("relative humidity", c.air().relativeHumidityPercent().map(h -> Figures.plain(h) + " %")),
                new Named("in this air for", c.air().restedHours().map(h -> Figures.plain(h) + " h")),
                new Named("strings", c.strings().state().map(StringState::words)),
                new Named("string set", c.strings().setName()),
                new Named("strings fitted on", c.strings().fittedOn().map(Object::toString)),
                new Named("soundhole", hole(c.hole())),
                new Named("support", c.placing().support()),
                new Named("strike tool", c.placing().strikeTool()),
                new Named("strike place", c.placing().strikePlace()),
                new Named("microphone", c.microphone().model()),
                new Named("distance", c.microphone().distanceMm().map(mm -> Figures.plain(mm) + " mm")),
                new Named("gain", c.microphone().gain()),
                new Named("added mass", c.addedMass().map(ConditionsText::mass)),
                new Named("operator", c.operator()),
                new Named("note", c.note().map(n -> n.replaceAll("\\s+", " "))));
    }

    private static Optional<String> hole(HoleState hole) {
        return hole == HoleState.UNKNOWN
                ? Optional.empty()
                : Optional.of(hole.name().toLowerCase(Locale.ROOT));
    }

    private static String mass(AddedMass mass) {
        return Figures.plain(mass.grams()) + " g"
                + mass.place().map(p -> " on " + p).orElse("");
    }

    private static String plainSpeech(String name, String words) {
        boolean speaksForItself = List.of("stage", "temperature", "strings").contains(name);
        return speaksForItself ? words : name + " " + words;
    }
}
