package io.github.tapwright.mode.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.mode.HoleState;
import java.util.Optional;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoupledBodyTest {

    private static final CoupledBody DAMPED = new CoupledBody(
            Air.ROUND,
            0.0140,
            new Soundhole(0.0425, 0.0025, 50),
            new Plate(0.080, 0.040, 165, 30),
            Optional.of(new Plate(0.150, 0.035, 200, 25)),
            HoleState.OPEN);

    /** The sum over poles and the directly solved answer are two roads to one number. */
    @ParameterizedTest
    @ValueSource(doubles = {40, 107, 150, 183, 210, 400, 2000})
    void polesAndResiduesTellTheWholeAnswer(double frequencyHz) {
        Complex s = new Complex(0, 2 * Math.PI * frequencyHz);
        Complex sum = new Complex(DAMPED.plateauPressurePerNewton(0.7));
        for (Pole pole : DAMPED.poles()) {
            Complex residue = DAMPED.pressureResidue(pole, 0.7);
            sum = sum.add(residue.divide(s.subtract(pole.s())))
                    .add(residue.conjugate().divide(s.subtract(pole.s().conjugate())));
        }
        Complex direct = DAMPED.pressurePerNewton(frequencyHz, 0.7);
        assertThat(sum.subtract(direct).norm()).isCloseTo(0, within(1e-9 * DAMPED.plateauPressurePerNewton(0.7)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {30, 107, 122, 183, 209, 900})
    void neverGivesBackMoreThanItTakes(double frequencyHz) {
        assertThat(DAMPED.topMobility(frequencyHz).getReal()).isGreaterThanOrEqualTo(0);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> DAMPED.with(HoleState.UNKNOWN)).hasMessageContaining("open or covered");
        assertThatThrownBy(() -> new Plate(0, 0.04, 165, 30)).hasMessageContaining("mass of a plate");
        assertThatThrownBy(() -> new Plate(0.08, 0.04, 165, 0.5)).hasMessageContaining("Q of the plate");
        assertThatThrownBy(() -> new Soundhole(0.04, Double.POSITIVE_INFINITY, 50))
                .hasMessageContaining("thickness");
        assertThatThrownBy(() -> new Air(1.2, Double.NaN)).hasMessageContaining("speed of sound");
    }
}
