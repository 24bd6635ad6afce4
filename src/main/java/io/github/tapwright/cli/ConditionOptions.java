package io.github.tapwright.cli;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;

/**
 * What was written down about a sitting; what is left out stays as it was, in a new sitting unknown, and says so
 * wherever it is shown. The word "unknown" takes back what was written down.
 */
final class ConditionOptions {

    @Option(
            names = "--stage",
            paramLabel = "STAGE",
            converter = KeyConverters.StageOfWork.class,
            description = "in-the-white, before-finish, finished, strung or later.")
    private Said<Stage> stage = Said.nothing();

    @Option(
            names = "--temperature",
            paramLabel = "°C",
            converter = SaidConverters.Figure.class,
            description = "Temperature of the room.")
    private Said<Double> temperatureCelsius = Said.nothing();

    @Option(
            names = "--humidity",
            paramLabel = "%",
            converter = SaidConverters.Figure.class,
            description = "Relative humidity of the room.")
    private Said<Double> relativeHumidityPercent = Said.nothing();

    @Option(
            names = "--rested",
            paramLabel = "HOURS",
            converter = SaidConverters.Figure.class,
            description = "For how many hours the instrument has lain in this room's air.")
    private Said<Double> restedHours = Said.nothing();

    @Option(
            names = "--strings",
            paramLabel = "STATE",
            converter = KeyConverters.StringsDid.class,
            description = "off, damped or free; off takes back string set and day with it.")
    private Said<StringState> strings = Said.nothing();

    @Option(
            names = "--string-set",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Maker and gauge of the strings.")
    private Said<String> stringSet = Said.nothing();

    @Option(
            names = "--strings-fitted",
            paramLabel = "DAY",
            converter = SaidConverters.Day.class,
            description = "Day they were put on, as 2026-03-14.")
    private Said<LocalDate> stringsFittedOn = Said.nothing();

    @Option(
            names = "--hole",
            paramLabel = "open|covered|unknown",
            converter = HoleConverter.class,
            description = "Soundhole open or covered.")
    private Optional<HoleState> hole = Optional.empty();

    @Option(
            names = "--support",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "What carried the instrument.")
    private Said<String> support = Said.nothing();

    @Option(
            names = "--tool",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "What struck it.")
    private Said<String> strikeTool = Said.nothing();

    @Option(
            names = "--place",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Where it was struck.")
    private Said<String> strikePlace = Said.nothing();

    @Option(
            names = "--microphone",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Which microphone.")
    private Said<String> microphone = Said.nothing();

    @Option(
            names = "--distance",
            paramLabel = "MM",
            converter = SaidConverters.Figure.class,
            description = "From the top to the microphone, mm.")
    private Said<Double> distanceMm = Said.nothing();

    @Option(
            names = "--gain",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Input gain as you read it.")
    private Said<String> gain = Said.nothing();

    @Option(
            names = "--added-mass",
            paramLabel = "G",
            description = "Mass stuck to the instrument for this sitting, g; 0 for none.")
    private Optional<Double> addedMassGrams = Optional.empty();

    @Option(
            names = "--mass-place",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Where that mass sat.")
    private Said<String> massPlace = Said.nothing();

    @Option(
            names = "--operator",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Who struck.")
    private Said<String> operator = Said.nothing();

    @Option(
            names = "--note",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Anything else.")
    private Said<String> note = Said.nothing();

    /** What was said, everything else unknown. */
    Conditions conditions() {
        return applyTo(Conditions.UNKNOWN);
    }

    /** What was known with all that was said. */
    Conditions applyTo(Conditions before) {
        return new Conditions(
                stage.over(before.stage()),
                new Air(
                        temperatureCelsius.over(before.air().temperatureCelsius()),
                        relativeHumidityPercent.over(before.air().relativeHumidityPercent()),
                        restedHours.over(before.air().restedHours())),
                strings(before.strings()),
                hole.orElse(before.hole()),
                new Placing(
                        support.over(before.placing().support()),
                        strikeTool.over(before.placing().strikeTool()),
                        strikePlace.over(before.placing().strikePlace())),
                new Microphone(
                        microphone.over(before.microphone().model()),
                        distanceMm.over(before.microphone().distanceMm()),
                        gain.over(before.microphone().gain())),
                addedMass(before.addedMass()),
                operator.over(before.operator()),
                note.over(before.note()));
    }

    /** Strings that are taken off leave neither their set nor its day behind. */
    private Strings strings(Strings before) {
        Strings known = strings.value().equals(Optional.of(StringState.OFF)) ? Strings.UNKNOWN : before;
        return new Strings(
                strings.over(before.state()), stringSet.over(known.setName()), stringsFittedOn.over(known.fittedOn()));
    }

    private Optional<AddedMass> addedMass(Optional<AddedMass> before) {
        Optional<Double> grams =
                addedMassGrams.or(() -> before.map(AddedMass::grams)).filter(g -> g != 0);
        if (grams.isEmpty() && massPlace.value().isPresent()) {
            throw new RefusedEntryException(
                    "--mass-place says where an added mass sat; say its grams with --added-mass");
        }
        return grams.map(g -> new AddedMass(g, massPlace.over(before.flatMap(AddedMass::place))));
    }
}
