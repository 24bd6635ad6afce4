package io.github.tapwright.synthesis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class CramerRaoTest {

    /**
     * One mode observed until nothing is left. Derived, averaging over the oscillation: with A²/2 times the
     * integrals of exp(−2σt), t·exp(−2σt), t²·exp(−2σt), which are 1/(2σ), 1/(4σ²), 1/(4σ³), the projected
     * information is rate/s²·A²/(16σ³), so that std(ω) = std(σ) = 4·s·σ^1.5/(A·sqrt(rate)). The averaging is
     * good to about 1/Q, hence 2 %.
     */
    @Test
    void agreesWithTheClosedFormOfOneLongDecay() {
        TrueMode mode = TrueMode.resonator(400, 60, 1);
        double sigma = mode.decayRatePerSecond();
        List<CramerRao.Bound> bounds =
                CramerRao.of(List.of(mode.pole()), List.of(List.of(new Complex(0.5, 0))), 48_000, 48_000, 1e-3);
        double pole = 4 * 1e-3 * Math.pow(sigma, 1.5) / (0.5 * Math.sqrt(48_000));
        assertThat(bounds.get(0).frequencyHz()).isCloseTo(pole / (2 * Math.PI), Percentage.withPercentage(2));
        double decayTime = Math.log(1000) / (sigma * sigma) * pole;
        assertThat(bounds.get(0).decayTimeSeconds()).isCloseTo(decayTime, Percentage.withPercentage(2));
        double q = 60 / sigma * pole;
        assertThat(bounds.get(0).q()).isCloseTo(q, Percentage.withPercentage(2));
    }

    @Test
    void fallsWithTheRootOfTheNumberOfEqualStrikes() {
        List<Complex> poles = List.of(
                TrueMode.resonator(200, 30, 1).pole(),
                TrueMode.resonator(215, 30, 1).pole());
        List<Complex> strike = List.of(new Complex(0.2, 0.1), new Complex(-0.1, 0.3));
        double one =
                CramerRao.of(poles, List.of(strike), 4000, 2400, 1e-3).get(1).q();
        double four = CramerRao.of(poles, List.of(strike, strike, strike, strike), 4000, 2400, 1e-3)
                .get(1)
                .q();
        assertThat(four).isCloseTo(one / 2, within(1e-9 * one));
    }

    @Test
    void growsWhenANeighbourComesClose() {
        List<Complex> strike = List.of(Complex.ONE, Complex.ONE);
        double far = boundBeside(260, strike);
        double near = boundBeside(206, strike);
        assertThat(near).isGreaterThan(2 * far);
    }

    private static double boundBeside(double neighbourHz, List<Complex> strike) {
        List<Complex> poles = List.of(
                TrueMode.resonator(200, 30, 1).pole(),
                TrueMode.resonator(neighbourHz, 30, 1).pole());
        return CramerRao.of(poles, List.of(strike), 4000, 2400, 1e-3).get(0).frequencyHz();
    }

    @Test
    void readsASceneAsItWasMade() {
        SyntheticTaps taps = TapScene.of(TrueMode.resonator(104, 25, 1), TrueMode.resonator(201, 28, 2))
                .whiteNoise(NoiseLevel.BODY_BAND, 40)
                .fault(0, PlantedFault.CLIPPED)
                .build();
        List<CramerRao.Bound> bounds = CramerRao.of(taps, 0.8);
        assertThat(bounds).hasSize(2);
        assertThat(bounds.get(0).frequencyHz()).isBetween(1e-5, 0.1);
    }
}
