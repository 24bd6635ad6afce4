package io.github.tapwright.desktop.shelf;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.statistics.Figures;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Something one can type about an instrument. */
enum InstrumentLine {
    NICKNAME("Name in the shop", "", "may stay empty", Instrument::nickname),
    SCALE("Scale length", "mm", "such as 650", figure(i -> i.body().scaleLengthMm())),
    STRING_COUNT(
            "Number of strings", "", "such as 6", i -> i.body().stringCount().map(Object::toString)),
    SOUNDHOLE(
            "Diameter of the soundhole",
            "mm",
            "such as 85",
            figure(i -> i.body().soundholeDiameterMm())),
    BODY_NOTES("Notes on the body", "", "", i -> i.body().notes()),
    OUTER_SKIN(
            "Outer skin",
            "",
            "wood one sees, or of a solid top",
            i -> i.construction().outerSkin().material()),
    OUTER_SKIN_MM(
            "Thickness of the outer skin",
            "mm",
            "such as 2.4",
            figure(i -> i.construction().outerSkin().thicknessMm())),
    CORE("Core", "", "material between the skins", i -> i.construction().core().material()),
    CORE_MM(
            "Thickness of the core",
            "mm",
            "such as 1.6",
            figure(i -> i.construction().core().thicknessMm())),
    INNER_SKIN(
            "Inner skin",
            "",
            "wood the braces are glued to",
            i -> i.construction().innerSkin().material()),
    INNER_SKIN_MM(
            "Thickness of the inner skin",
            "mm",
            "such as 0.6",
            figure(i -> i.construction().innerSkin().thicknessMm())),
    BRACING("Bracing", "", "its pattern", i -> i.construction().bracing()),
    NOTES("Notes", "", "", Instrument::notes);

    private final String words;
    private final String unit;
    private final String prompt;
    /** A function of this class alone, which does not change, though the type cannot say so. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<Instrument, Optional<String>> known;

    InstrumentLine(String words, String unit, String prompt, Function<Instrument, Optional<String>> known) {
        this.words = words;
        this.unit = unit;
        this.prompt = prompt;
        this.known = known;
    }

    private static Function<Instrument, Optional<String>> figure(Function<Instrument, Optional<Double>> of) {
        return instrument -> of.apply(instrument).map(Figures::plain);
    }

    /** What is asked, with its unit where it has one. */
    String asked() {
        return unit.isEmpty() ? words : words + " (" + unit + ")";
    }

    /** What stands there while nothing is typed. */
    String prompt() {
        return prompt;
    }

    /** What would be typed for what is known; empty if nothing is. */
    Optional<String> text(Instrument of) {
        return known.apply(of);
    }

    /** What is known, in words. */
    Written written(Instrument of) {
        return new Written(words.toLowerCase(Locale.ROOT), text(of).map(typed -> (typed + " " + unit).strip()));
    }
}
