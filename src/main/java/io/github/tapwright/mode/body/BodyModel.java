package io.github.tapwright.mode.body;

import io.github.tapwright.statistics.MonteCarlo;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A body as its readings tell it: every quantity with its uncertainty, or what is missing, or what is contradictory.
 *
 * <p>The uncertainties of all readings are carried through the model by drawing from them, since its formulas are too
 * curved for straight lines. Source: [ChristensenVistisen1980], [GUM-S1].
 */
public final class BodyModel {

    /** Twenty thousand draws: interval ends to about 2 % of their width. */
    public static final MonteCarlo USUAL = new MonteCarlo(20_000, 1);

    private static final String NOT_LOWERED =
            "the added mass did not lower the resonances, as every mass must; check that it sat on the"
                    + " bridge, did not rattle, and that nothing else changed between the sittings";

    private final BodyReadings readings;
    private final BodyDraws draws;
    private final Map<BodyQuantity, Answer> answers;

    private BodyModel(BodyReadings readings, BodyDraws draws) {
        this.readings = readings;
        this.draws = draws;
        Map<BodyQuantity, Answer> all = new EnumMap<>(BodyQuantity.class);
        for (BodyQuantity quantity : BodyQuantity.values()) {
            all.put(quantity, answer(quantity));
        }
        this.answers = Collections.unmodifiableMap(all);
    }

    /**
     * Fits the model.
     *
     * @param readings what was measured
     * @param method how many draws, and their seed
     * @return the model
     */
    public static BodyModel of(BodyReadings readings, MonteCarlo method) {
        return new BodyModel(readings, BodyDraws.of(readings, method));
    }

    /**
     * What was measured.
     *
     * @return the readings
     */
    public BodyReadings readings() {
        return readings;
    }

    /**
     * Every quantity.
     *
     * @return in the order of {@link BodyQuantity}
     */
    public Map<BodyQuantity, Answer> answers() {
        return answers;
    }

    /**
     * One quantity.
     *
     * @param quantity which
     * @return what is known about it
     */
    public Answer answerTo(BodyQuantity quantity) {
        return answers.getOrDefault(quantity, new Answer.Missing(quantity.need.words));
    }

    /**
     * What the main top alone would say about the moving mass; shown only so that nobody believes it.
     *
     * @return kg, empty without an open sitting with an added mass
     */
    public Optional<Double> naiveMassKilograms() {
        return draws.best().naiveMass();
    }

    /**
     * What a change would do.
     *
     * @param change to mass, stiffness, hole or volume
     * @return the resonances with the hole open, or what must be known first
     */
    public Prediction predict(BodyChange change) {
        Optional<String> missing = missing(change);
        return missing.isPresent() ? new Prediction.Refused(missing.get()) : Foresight.of(draws, change);
    }

    private Optional<String> missing(BodyChange change) {
        if (draws.best().frequencies().isEmpty()) {
            return Optional.of(contradiction().orElse("no prediction yet: " + BodyQuantity.Need.COVERED.words));
        }
        if (change.massKilograms() != 0 && draws.best().topMass().isEmpty()) {
            return Optional.of(
                    heavier().orElse("a change of mass needs the top's mass: " + BodyQuantity.Need.LOADED.words));
        }
        if (change.volumeCubicMetres() != 0 && draws.best().volume().isEmpty()) {
            return Optional.of("a change of volume needs the volume of the box; give it in litres");
        }
        if (change.holeRadiusMetres() != 0 && draws.best().hole().isEmpty()) {
            return Optional.of("a change of the hole needs its radius and the top's thickness; give both in mm");
        }
        return Optional.empty();
    }

    private Answer answer(BodyQuantity quantity) {
        Optional<Double> value = draws.best().figure(quantity);
        if (value.isPresent()) {
            return draws.answer(value.get(), quantity);
        }
        Optional<String> trouble = switch (quantity.need) {
            case COVERED -> contradiction();
            case COVERED_WITH_BACK -> readings.liveBack() ? contradiction() : Optional.empty();
            case LOADED -> heavier();
            case LOADED_AND_COVERED, ALL -> contradiction().or(this::heavier);
            case LOADED_OPEN_AND_COVERED -> contradiction().or(this::heavier).or(this::heavierBySum);
            case MEASURES -> Optional.empty();
        };
        return trouble.<Answer>map(Answer.Contradicted::new).orElseGet(() -> new Answer.Missing(quantity.need.words));
    }

    private Optional<String> contradiction() {
        List<Double> open = draws.best().openHz();
        return draws.best().coveredHz().flatMap(c -> Inversion.contradiction(open, c));
    }

    private Optional<String> heavier() {
        return draws.best().load().isPresent() && draws.best().topMass().isEmpty()
                ? Optional.of(NOT_LOWERED)
                : Optional.empty();
    }

    /** One resonance may have risen although all of them multiplied are lower. */
    private Optional<String> heavierBySum() {
        boolean asked = draws.best().frequencies().isPresent()
                && draws.best().load().filter(l -> !l.covered()).isPresent();
        return asked && draws.best().topMassBySum().isEmpty() ? Optional.of(NOT_LOWERED) : Optional.empty();
    }
}
