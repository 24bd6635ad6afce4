package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One condition of a sitting in words.
 *
 * @param name such as "relative humidity"
 * @param words what was written down; empty if nothing was
 */
public record ConditionLine(String name, Optional<String> words) {

    /**
     * Every condition, known or not.
     *
     * @param c what was written down
     * @return in a fixed order
     */
    public static List<ConditionLine> of(Conditions c) {
        return List.of(
                new ConditionLine("stage", c.stage().map(Stage::words)),
                new ConditionLine("temperature", c.air().temperatureCelsius().map(t -> Figures.plain(t) + " °C")),
                new ConditionLine(
                        "relative humidity", c.air().relativeHumidityPercent().map(h -> Figures.plain(h) + " %")),
                new ConditionLine("in this air for", c.air().restedHours().map(h -> Figures.plain(h) + " h")),
                new ConditionLine("strings", c.strings().state().map(StringState::words)),
                new ConditionLine("string set", c.strings().setName()),
                new ConditionLine("strings fitted on", c.strings().fittedOn().map(Object::toString)),
                new ConditionLine("soundhole", hole(c.hole())),
                new ConditionLine("support", c.placing().support()),
                new ConditionLine("strike tool", c.placing().strikeTool()),
                new ConditionLine("strike place", c.placing().strikePlace()),
                new ConditionLine("microphone", c.microphone().model()),
                new ConditionLine("distance", c.microphone().distanceMm().map(mm -> Figures.plain(mm) + " mm")),
                new ConditionLine("gain", c.microphone().gain()),
                new ConditionLine("added mass", c.addedMass().map(ConditionLine::mass)),
                new ConditionLine("operator", c.operator()),
                new ConditionLine("note", c.note().map(n -> n.replaceAll("\\s+", " "))));
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

    /**
     * The condition as part of a sentence: what speaks for itself without its name.
     *
     * @return such as "19.5 °C" or "soundhole open"; empty if it is unknown
     */
    public Optional<String> spoken() {
        boolean speaksForItself = List.of("stage", "temperature", "strings").contains(name);
        return words.map(w -> speaksForItself ? w : name + " " + w);
    }
}
