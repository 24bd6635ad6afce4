package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that was written down about a sitting besides the recordings; what was not is unknown.
 *
 * @param stage how far the instrument had come; empty if unknown
 * @param air temperature and humidity
 * @param strings what the strings were and did
 * @param hole soundhole open or covered
 * @param placing how the instrument was held and struck
 * @param microphone which microphone, where, at which gain
 * @param addedMass a mass stuck to the instrument; empty if there was none
 * @param operator who struck; empty if unknown
 * @param note anything else; empty if there is nothing
 */
public record Conditions(
        Optional<Stage> stage,
        Air air,
        Strings strings,
        HoleState hole,
        Placing placing,
        Microphone microphone,
        Optional<AddedMass> addedMass,
        Optional<String> operator,
        Optional<String> note) {

    /** Nobody wrote anything down. */
    public static final Conditions UNKNOWN = new Conditions(
            Optional.empty(),
            Air.UNKNOWN,
            Strings.UNKNOWN,
            HoleState.UNKNOWN,
            Placing.UNKNOWN,
            Microphone.UNKNOWN,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** Takes blanks off the texts. */
    public Conditions {
        operator = Entry.line("the operator", operator);
        note = Entry.note("the note", note);
    }

    /**
     * What nobody wrote down, because whoever compares sittings must see it. An added mass is not among it: what
     * nobody stuck on is not there.
     *
     * @return names of the missing conditions in a fixed order, such as "relative humidity"
     */
    public List<String> unknown() {
        Map<String, Boolean> known = new LinkedHashMap<>();
        known.put("stage", stage.isPresent());
        known.put("temperature", air.temperatureCelsius().isPresent());
        known.put("relative humidity", air.relativeHumidityPercent().isPresent());
        known.put("hours in this air", air.restedHours().isPresent());
        known.put("strings", strings.state().isPresent());
        known.put("string set", strings.setName().isPresent() || withoutStrings());
        known.put("strings fitted on", strings.fittedOn().isPresent() || withoutStrings());
        known.put("soundhole", hole != HoleState.UNKNOWN);
        known.put("support", placing.support().isPresent());
        known.put("strike tool", placing.strikeTool().isPresent());
        known.put("strike place", placing.strikePlace().isPresent());
        known.put("microphone", microphone.model().isPresent());
        known.put("distance", microphone.distanceMm().isPresent());
        known.put("gain", microphone.gain().isPresent());
        known.put("operator", operator.isPresent());
        return known.entrySet().stream()
                .filter(e -> !e.getValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    private boolean withoutStrings() {
        return strings.state().equals(Optional.of(StringState.OFF));
    }
}
