package io.github.tapwright.desktop.conditions;

import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;
import java.util.function.Function;

/** A line of the form one types on. */
public enum TypedLine {
    /** In the maker's unit. */
    TEMPERATURE("Temperature", "", c -> Optional.empty()),
    /** Of the room. */
    HUMIDITY("Relative humidity (%)", "", c -> c.air().relativeHumidityPercent().map(Figures::plain)),
    /** How long the wood could settle. */
    RESTED("Hours in this air", "such as 24", c -> c.air().restedHours().map(Figures::plain)),
    /** Anything else. */
    NOTE("Remark", "", Conditions::note),
    /** A mass stuck on. */
    MASS("Added mass (g)", "none", c -> c.addedMass().map(AddedMass::grams).map(Figures::plain)),
    /** Its place. */
    MASS_PLACE("Where it sits", "such as bridge centre", c -> c.addedMass().flatMap(AddedMass::place)),
    /** What carries the instrument. */
    SUPPORT("Support", "such as foam at both ends", c -> c.placing().support()),
    /** What strikes it. */
    TOOL("Struck with", "such as knuckle", c -> c.placing().strikeTool()),
    /** Where. */
    PLACE("Struck where", "such as bridge centre", c -> c.placing().strikePlace()),
    /** Its model. */
    MICROPHONE("Microphone", "model", c -> c.microphone().model()),
    /** From the top. */
    DISTANCE("Distance (mm)", "from the top", c -> c.microphone().distanceMm().map(Figures::plain)),
    /** As the maker reads it. */
    GAIN("Gain", "as you read it", c -> c.microphone().gain()),
    /** Who strikes. */
    OPERATOR("Who strikes", "", Conditions::operator);

    private final String words;
    private final String prompt;
    /** A function of this class alone, which does not change, though the type cannot say so. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<Conditions, Optional<String>> known;

    TypedLine(String words, String prompt, Function<Conditions, Optional<String>> known) {
        this.words = words;
        this.prompt = prompt;
        this.known = known;
    }

    /** What it is called. */
    String words() {
        return words;
    }

    /** What stands there while nothing is typed. */
    String prompt() {
        return prompt;
    }

    /** Whether a remembered one would be taken for a reading, so that every new sitting asks for it. */
    boolean isReadAnew() {
        return compareTo(SUPPORT) < 0;
    }

    /** What would be typed for what is known. */
    String text(Conditions of, Units units) {
        Optional<String> text =
                this == TEMPERATURE ? of.air().temperatureCelsius().map(units::text) : known.apply(of);
        return text.orElse("");
    }
}
