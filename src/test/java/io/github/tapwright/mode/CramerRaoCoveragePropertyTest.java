package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.CramerRao;
import io.github.tapwright.tap.Decays;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

/**
 * 200 seeded trials in white noise 30 dB below the decays' first tenth of a second: errors against the
 * Cramér-Rao bound (at most 1.5 times), and how often the 95 % intervals hold the truth (92 to 98 %).
 */
class CramerRaoCoveragePropertyTest {

    private static final double RATE_HZ = 4000;
    private static final int SAMPLES = 2400;
    private static final int STRIKES = 5;
    private static final int TRIALS = 200;
    private static final double[] FREQUENCIES = {101, 186, 197, 243};
    private static final double[] QS = {21, 30, 34, 27};
    private static final TapSettings BAND = TapSettings.STANDARD.withBand(60, 300);

    private final List<Complex> poles = new ArrayList<>();
    private final double[] squaredHz = new double[FREQUENCIES.length];
    private final double[] squaredQ = new double[FREQUENCIES.length];
    private int inside;
    private int intervals;

    @Test
    void errorsStayNearTheBoundAndIntervalsHoldTheTruth() {
        for (int m = 0; m < FREQUENCIES.length; m++) {
            double omega = 2 * Math.PI * FREQUENCIES[m];
            double sigma = omega / (2 * QS[m]);
            poles.add(new Complex(-sigma, Math.sqrt(omega * omega - sigma * sigma)));
        }
        RandomGenerator chance = Chance.seeded(77);
        List<List<Complex>> amplitudes = amplitudes(chance);
        double noiseRms = 0.03;
        for (int t = 0; t < TRIALS; t++) {
            trial(chance, amplitudes, noiseRms);
        }
        List<CramerRao.Bound> bounds = CramerRao.of(poles, amplitudes, RATE_HZ, SAMPLES, noiseRms);
        for (int m = 0; m < FREQUENCIES.length; m++) {
            double ratioHz = Math.sqrt(squaredHz[m] / TRIALS) / bounds.get(m).frequencyHz();
            double ratioQ = Math.sqrt(squaredQ[m] / TRIALS) / bounds.get(m).q();
            System.out.printf("%.0f Hz: error/bound %.2f (frequency), %.2f (Q)%n", FREQUENCIES[m], ratioHz, ratioQ);
            assertThat(ratioHz).isLessThan(1.5);
            assertThat(ratioQ).isLessThan(1.5);
        }
        double coverage = (double) inside / intervals;
        System.out.printf("95 %% intervals hold the truth in %.1f %% of %d%n", 100 * coverage, intervals);
        assertThat(coverage).isBetween(0.92, 0.98);
    }

    private static List<List<Complex>> amplitudes(RandomGenerator chance) {
        List<List<Complex>> amplitudes = new ArrayList<>();
        for (int s = 0; s < STRIKES; s++) {
            List<Complex> own = new ArrayList<>();
            for (int m = 0; m < FREQUENCIES.length; m++) {
                own.add(new Complex(chance.nextGaussian(), chance.nextGaussian()).multiply(m == 0 ? 0.5 : 1));
            }
            amplitudes.add(own);
        }
        return amplitudes;
    }

    private void trial(RandomGenerator chance, List<List<Complex>> amplitudes, double noiseRms) {
        double[][] samples = new double[STRIKES][SAMPLES];
        for (int s = 0; s < STRIKES; s++) {
            for (int m = 0; m < FREQUENCIES.length; m++) {
                Complex value = amplitudes.get(s).get(m);
                Complex step = poles.get(m).divide(RATE_HZ).exp();
                for (int n = 0; n < SAMPLES; n++) {
                    samples[s][n] += value.getReal();
                    value = value.multiply(step);
                }
            }
            for (int n = 0; n < SAMPLES; n++) {
                samples[s][n] += noiseRms * chance.nextGaussian();
            }
        }
        Decays decays = new Decays(RATE_HZ, samples, List.of());
        List<Resonance> found =
                new ResonanceReport(new BandSurvey(new DecaySpectra(decays), BAND).modes(), BAND).resonances();
        for (int m = 0; m < FREQUENCIES.length; m++) {
            double hertz = FREQUENCIES[m];
            Resonance r = found.stream()
                    .min((a, b) -> Double.compare(
                            Math.abs(a.frequencyHz().value() - hertz),
                            Math.abs(b.frequencyHz().value() - hertz)))
                    .orElseThrow();
            squaredHz[m] += Math.pow(r.frequencyHz().value() - hertz, 2);
            squaredQ[m] += Math.pow(r.q().value() - QS[m], 2);
            count(r.frequencyHz(), hertz);
            count(r.q(), QS[m]);
            count(r.decayTimeSeconds(), Math.log(1000) * QS[m] / (Math.PI * hertz));
        }
    }

    private void count(Estimate estimate, double truth) {
        intervals++;
        inside += Math.abs(estimate.value() - truth) <= estimate.halfWidth95() ? 1 : 0;
    }
}
