package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.tap.Decays;
import io.github.tapwright.tap.TapSettings;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** A resonance whose model is right stays as sure as the noise allows; one whose model is wrong says so. */
class StartTimeSpreadTest {

    private static final double RATE_HZ = 4000;
    private static final TapSettings BAND = TapSettings.STANDARD.withBand(60, 300);

    private static List<Resonance> resonances(DoubleUnaryOperator phaseOf) {
        RandomGenerator chance = Chance.seeded(8);
        double[][] decays = new double[6][2400];
        for (int n = 0; n < decays[0].length; n++) {
            double t = n / RATE_HZ;
            for (double[] decay : decays) {
                decay[n] = Math.exp(-t / 0.05) * Math.sin(phaseOf.applyAsDouble(t)) + 1e-3 * chance.nextGaussian();
            }
        }
        DecaySpectra spectra = new DecaySpectra(new Decays(RATE_HZ, decays, List.of()));
        return new ResonanceReport(new BandSurvey(spectra, BAND).modes(), BAND).resonances();
    }

    @Test
    void aTrueDecayingSineKeepsItsSmallUncertainty() {
        List<Resonance> found = resonances(t -> 2 * Math.PI * 180 * t);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).frequencyHz().value()).isCloseTo(180.03, within(0.02)); // natural, not damped
        assertThat(found.get(0).frequencyHz().standardUncertainty()).isLessThan(0.01);
    }

    @Test
    void aPitchThatGlidesIsReportedWithTheGlideInItsUncertainty() {
        // Falls by 20 Hz a second: no sum of decaying sines.
        List<Resonance> found = resonances(t -> 2 * Math.PI * (182 * t - 10 * t * t));
        assertThat(found.stream().map(r -> r.frequencyHz()).filter(f -> Math.abs(f.value() - 181) < 4))
                .allSatisfy(f -> assertThat(f.standardUncertainty()).isGreaterThan(0.2));
    }

    @Test
    void strengthsSeenFromALaterStartAreThoseOfTheShiftedDecay() {
        SharedMode mode = new SharedMode(new Pole(2 * Math.PI * 100, 30), List.of(0.7, -0.4));
        SharedMode later = mode.later(0.013);
        double omega = 2 * Math.PI * 100;
        for (double t : new double[] {0, 0.002, 0.005}) {
            double there = value(mode, omega, t + 0.013);
            assertThat(value(later, omega, t)).isCloseTo(there, within(1e-12));
        }
    }

    private static double value(SharedMode mode, double omega, double t) {
        return Math.exp(-30 * t) * (mode.cosine(0) * Math.cos(omega * t) + mode.sine(0) * Math.sin(omega * t));
    }
}
