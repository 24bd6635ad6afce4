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

/** What was written down about a sitting; what is left out is unknown, and says so wherever it is shown. */
final class ConditionOptions {

    @Option(
            names = "--stage",
            paramLabel = "STAGE",
            converter = KeyConverters.StageOfWork.class,
            description = "in-the-white, before-finish, finished, strung or later.")
    private Optional<Stage> stage = Optional.empty();

    @Option(names = "--temperature", paramLabel = "°C", description = "Temperature of the room.")
    private Optional<Double> temperatureCelsius = Optional.empty();

    @Option(names = "--humidity", paramLabel = "%", description = "Relative humidity of the room.")
    private Optional<Double> relativeHumidityPercent = Optional.empty();

    @Option(
            names = "--rested",
            paramLabel = "HOURS",
            description = "For how many hours the instrument has lain in this room's air.")
    private Optional<Double> restedHours = Optional.empty();

    @Option(
            names = "--strings",
            paramLabel = "STATE",
            converter = KeyConverters.StringsDid.class,
            description = "off, damped or free.")
    private Optional<StringState> strings = Optional.empty();

    @Option(names = "--string-set", paramLabel = "TEXT", description = "Maker and gauge of the strings.")
    private Optional<String> stringSet = Optional.empty();

    @Option(names = "--strings-fitted", paramLabel = "DAY", description = "Day they were put on, as 2026-03-14.")
    private Optional<LocalDate> stringsFittedOn = Optional.empty();

    @Option(
            names = "--hole",
            paramLabel = "open|covered",
            converter = HoleConverter.class,
            description = "Soundhole open or covered.")
    private Optional<HoleState> hole = Optional.empty();

    @Option(names = "--support", paramLabel = "TEXT", description = "What carried the instrument.")
    private Optional<String> support = Optional.empty();

    @Option(names = "--tool", paramLabel = "TEXT", description = "What struck it.")
    private Optional<String> strikeTool = Optional.empty();

    @Option(names = "--place", paramLabel = "TEXT", description = "Where it was struck.")
    private Optional<String> strikePlace = Optional.empty();

    @Option(names = "--microphone", paramLabel = "TEXT", description = "Which microphone.")
    private Optional<String> microphone = Optional.empty();

    @Option(names = "--distance", paramLabel = "MM", description = "From the top to the microphone, mm.")
    private Optional<Double> distanceMm = Optional.empty();

    @Option(names = "--gain", paramLabel = "TEXT", description = "Input gain as you read it.")
    private Optional<String> gain = Optional.empty();

    @Option(
            names = "--added-mass",
            paramLabel = "G",
            description = "Mass stuck to the instrument for this sitting, g; 0 for none.")
    private Optional<Double> addedMassGrams = Optional.empty();

    @Option(names = "--mass-place", paramLabel = "TEXT", description = "Where that mass sat.")
    private Optional<String> massPlace = Optional.empty();

    @Option(names = "--operator", paramLabel = "TEXT", description = "Who struck.")
    private Optional<String> operator = Optional.empty();

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything else.")
    private Optional<String> note = Optional.empty();

    /** What was said, everything else unknown. */
    Conditions conditions() {
        return applyTo(Conditions.UNKNOWN);
    }

    /** What was known with all that was said; an empty text means unknown. */
    Conditions applyTo(Conditions before) {
        return new Conditions(
                stage.or(before::stage),
                new Air(
                        temperatureCelsius.or(before.air()::temperatureCelsius),
                        relativeHumidityPercent.or(before.air()::relativeHumidityPercent),
                        restedHours.or(before.air()::restedHours)),
                new Strings(
                        strings.or(before.strings()::state),
                        stringSet.or(before.strings()::setName),
                        stringsFittedOn.or(before.strings()::fittedOn)),
                hole.orElse(before.hole()),
                new Placing(
                        support.or(before.placing()::support),
                        strikeTool.or(before.placing()::strikeTool),
                        strikePlace.or(before.placing()::strikePlace)),
                new Microphone(
                        microphone.or(before.microphone()::model),
                        distanceMm.or(before.microphone()::distanceMm),
                        gain.or(before.microphone()::gain)),
                addedMass(before.addedMass()),
                operator.or(before::operator),
                note.or(before::note));
    }

    private Optional<AddedMass> addedMass(Optional<AddedMass> before) {
        Optional<Double> grams =
                addedMassGrams.or(() -> before.map(AddedMass::grams)).filter(g -> g != 0);
        if (grams.isEmpty() && massPlace.filter(p -> !p.isBlank()).isPresent()) {
            throw new RefusedEntryException(
                    "--mass-place says where an added mass sat; say its grams with --added-mass");
        }
        return grams.map(g -> new AddedMass(g, massPlace.or(() -> before.flatMap(AddedMass::place))));
    }
}
