package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.InventedSittings.BENCH;
import static io.github.tapwright.comparison.InventedSittings.KNOWN;
import static io.github.tapwright.comparison.InventedSittings.conditions;
import static io.github.tapwright.comparison.InventedSittings.with;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.InventedResults;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Sitting;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ComparabilityTest {

    private static Comparability taps(Conditions a, Conditions b) {
        return Comparability.of(
                InventedSittings.of(1, InventedResults.result(1), a),
                InventedSittings.of(2, InventedResults.result(1), b),
                BENCH,
                Optional.empty());
    }

    private static Sitting plucks(long id, Optional<CalibrationId> calibration, Conditions conditions) {
        return InventedSittings.of(
                id,
                new Findings.OfPlucks(new PluckRun(List.of(), Tuning.CLASSICAL, calibration, "plucks-1")),
                conditions);
    }

    private static Comparability plucks(Optional<CalibrationId> calibration, Conditions a, Conditions b) {
        return Comparability.of(plucks(1, calibration, a), plucks(2, calibration, b), BENCH, Optional.empty());
    }

    private static ConditionCheck check(Comparability comparability, String condition) {
        return comparability.checks().stream()
                .filter(c -> c.condition().equals(condition))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameConditionsAreFineThroughout() {
        assertThat(taps(KNOWN, KNOWN).checks()).allMatch(c -> c.worst() == Grade.FINE);
    }

    @Test
    void whatNobodyWroteDownIsDoubtfulNeverTheSame() {
        Comparability unknown = taps(Conditions.UNKNOWN, Conditions.UNKNOWN);
        assertThat(unknown.troubles())
                .extracting(ConditionCheck::condition)
                .contains("soundhole", "strings", "stage", "support", "relative humidity", "temperature");
        for (Quantity quantity : Quantity.values()) {
            assertThat(unknown.grade(quantity)).isEqualTo(Grade.DOUBTFUL);
            assertThat(unknown.shows(quantity)).isTrue();
        }
    }

    @Test
    void aTemperatureIsCalledCorrectedForOnlyWhereTheCorrectionCanBeMade() {
        Conditions warm =
                with(KNOWN, new Air(Optional.of(26.0), Optional.of(42.0), Optional.of(48.0)), Optional.empty());
        Conditions warmOnly =
                with(KNOWN, new Air(Optional.of(26.0), Optional.empty(), Optional.of(48.0)), Optional.empty());

        assertThat(check(taps(KNOWN, warm), "temperature").reason()).contains("is corrected to A's");
        ConditionCheck half = check(taps(KNOWN, warmOnly), "temperature");
        assertThat(half.worst()).isEqualTo(Grade.DOUBTFUL);
        assertThat(half.reason()).contains("not corrected");
    }

    @Test
    void aMassMakesAnotherBodyAndAnAbsentOneIsNone() {
        Conditions loaded = with(KNOWN, KNOWN.air(), Optional.of(new AddedMass(20, Optional.of("bridge, middle"))));
        Conditions elsewhere = with(KNOWN, KNOWN.air(), Optional.of(new AddedMass(20, Optional.of("lower bout"))));
        Conditions somewhere = with(KNOWN, KNOWN.air(), Optional.of(new AddedMass(20, Optional.empty())));
        for (Quantity quantity : Quantity.values()) {
            assertThat(taps(KNOWN, loaded).grade(quantity)).isEqualTo(Grade.REFUSED);
            assertThat(taps(loaded, elsewhere).grade(quantity)).isEqualTo(Grade.REFUSED);
            assertThat(taps(loaded, somewhere).grade(quantity)).isEqualTo(Grade.DOUBTFUL);
            assertThat(taps(loaded, loaded).grade(quantity)).isEqualTo(Grade.FINE);
        }
        assertThat(check(taps(KNOWN, loaded), "added mass").reason()).startsWith("none / 20.00 g on bridge, middle");
    }

    /** 60 % is 10 points outside the window: after 24 h 10/e = 3.7 remain, settled below 2 after 24·ln 5 = 38.6 h. */
    @Test
    void woodThatHasNotSettledIsDoubtfulAndSaysForHowLong() {
        Conditions early = with(KNOWN, damp(Optional.of(24.0)), Optional.empty());
        ConditionCheck check = check(taps(early, early), "rest in the room");
        assertThat(check.grade(Quantity.FREQUENCY)).isEqualTo(Grade.DOUBTFUL);
        assertThat(check.grade(Quantity.LEVEL)).isEqualTo(Grade.FINE);
        assertThat(check.reason()).contains("3.7 points of humidity", "another 15 h");
        for (Optional<Double> hours : List.of(Optional.of(39.0), Optional.<Double>empty())) {
            Conditions other = with(KNOWN, damp(hours), Optional.empty());
            assertThat(check(taps(other, other), "rest in the room").worst()).isEqualTo(Grade.FINE);
        }
    }

    private static Air damp(Optional<Double> hours) {
        return new Air(Optional.of(20.0), Optional.of(60.0), hours);
    }

    @Test
    void freeStringsAreNotHeldAgainstDampedOnes() {
        Comparability mixed = taps(KNOWN, conditions(HoleState.OPEN, StringState.FREE, 20, 43, "knob at 4"));
        assertThat(mixed.grade(Quantity.Q)).isEqualTo(Grade.REFUSED);
        assertThat(mixed.shows(Quantity.FREQUENCY)).isFalse();
        assertThat(mixed.troubles().get(0).reason()).contains("strings damped / strings free");
    }

    @Test
    void gainDropsOutOfTapsAndForbidsUncalibratedLevels() {
        Conditions louder = conditions(HoleState.OPEN, StringState.DAMPED, 20, 43, "knob at 7");
        assertThat(taps(KNOWN, louder).grade(Quantity.LEVEL)).isEqualTo(Grade.FINE);
        assertThat(plucks(Optional.empty(), KNOWN, louder).grade(Quantity.LEVEL))
                .isEqualTo(Grade.REFUSED);
        assertThat(plucks(Optional.empty(), KNOWN, louder).grade(Quantity.FREQUENCY))
                .isEqualTo(Grade.FINE);
        assertThat(plucks(Optional.empty(), KNOWN, KNOWN).grade(Quantity.LEVEL)).isEqualTo(Grade.FINE);
        assertThat(plucks(Optional.of(new CalibrationId(3)), KNOWN, louder).grade(Quantity.LEVEL))
                .isEqualTo(Grade.FINE);
    }

    @Test
    void tapsAndPlucksAreTwoDifferentThings() {
        Comparability mixed = Comparability.of(
                InventedSittings.of(1, InventedResults.result(1), KNOWN),
                plucks(2, Optional.empty(), KNOWN),
                BENCH,
                Optional.empty());
        assertThat(check(mixed, "procedure").worst()).isEqualTo(Grade.REFUSED);
    }

    @Test
    void airApartIsCorrectedForAndFarApartDoubtful() {
        Comparability near = taps(KNOWN, conditions(HoleState.OPEN, StringState.DAMPED, 22, 47, "knob at 4"));
        assertThat(near.grade(Quantity.FREQUENCY)).isEqualTo(Grade.CORRECTED);
        assertThat(near.grade(Quantity.LEVEL)).isEqualTo(Grade.FINE);
        Comparability far = taps(KNOWN, conditions(HoleState.OPEN, StringState.DAMPED, 20, 70, "knob at 4"));
        assertThat(check(far, "relative humidity").grade(Quantity.FREQUENCY)).isEqualTo(Grade.DOUBTFUL);
        assertThat(check(far, "shop's window").reason()).contains("40 to 50 %");
    }
}
