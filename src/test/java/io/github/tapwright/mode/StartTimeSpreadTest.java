package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.tap.Decays;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    @ParameterizedTest
    @CsvSource({"4000,1600", "4000,3200", "4410,3528", "4410,4374", "4800,3840"})
    void theBeginningLeftOutIsAsLongAsSaidWhateverTheDecaysLength(double rateHz, int samples) {
        DecaySpectra spectra = new DecaySpectra(new Decays(rateHz, new double[1][samples], List.of()));
        List<Double> leftOut = StartTimeSpread.laterStarts(spectra).stream()
                .map(later -> spectra.seconds() - later.seconds())
                .toList();
        assertThat(leftOut).hasSize(3);
        assertThat(leftOut.get(0)).isCloseTo(0.015, within(1 / rateHz));
        assertThat(leftOut.get(1)).isCloseTo(0.030, within(1 / rateHz));
        assertThat(leftOut.get(2)).isCloseTo(0.050, within(1 / rateHz));
    }

    @Test
    void aModeThatDrownsBeforeTheLastStartIsListedAlmostAsSureAsTheFitIs() {
        List<Double> us = new ArrayList<>();
        for (long seed = 1; seed <= 20; seed++) {
            for (Resonance resonance : highMode(30, 0.02, seed).resonances()) {
                assertThat(errorInU(resonance.frequencyHz(), 820)).isLessThan(3.5);
                assertThat(errorInU(resonance.q(), 30)).isLessThan(3.5);
                us.add(resonance.q().standardUncertainty());
            }
        }
        assertThat(us).hasSizeBetween(16, 20);
        us.sort(null);
        assertThat(us.get(us.size() / 2)).as("the fit by itself: 0.20").isLessThan(0.3);
    }

    @Test
    void aModeThatNoLaterStartSeesAgainIsNotListed() {
        int said = 0;
        for (long seed = 1; seed <= 20; seed++) {
            ResonanceReport report = highMode(12, 0.1, seed);
            assertThat(report.resonances()).isEmpty();
            said += report.warnings().toString().contains("lost in the noise before") ? 1 : 0;
        }
        assertThat(said).as("others catch hold of the noise").isGreaterThan(13);
    }

    private static double errorInU(Estimate found, double truth) {
        return Math.abs(found.value() - truth) / found.standardUncertainty();
    }

    /** A mode at 820 Hz beside the noise, which is that large a share of the mode's first amplitude. */
    private static ResonanceReport highMode(double q, double noise, long seed) {
        RandomGenerator chance = Chance.seeded(seed);
        double[][] decays = new double[6][3200];
        double sigma = Math.PI * 820 / q;
        double omega = Math.sqrt(Math.pow(2 * Math.PI * 820, 2) - sigma * sigma);
        for (double[] decay : decays) {
            for (int n = 0; n < decay.length; n++) {
                double t = n / RATE_HZ;
                decay[n] = Math.exp(-sigma * t) * Math.sin(omega * t) + noise * chance.nextGaussian();
            }
        }
        TapSettings high = TapSettings.STANDARD.withBand(600, 1200);
        DecaySpectra spectra = new DecaySpectra(new Decays(RATE_HZ, decays, List.of()));
        return new ResonanceReport(new BandSurvey(spectra, high).modes(), high);
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
