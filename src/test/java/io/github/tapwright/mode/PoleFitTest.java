package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.tap.Decays;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** The short cuts of the fit agree with doing it the long way. */
class PoleFitTest {

    private static final List<Pole> POLES =
            List.of(new Pole(2 * Math.PI * 110, 12), new Pole(2 * Math.PI * 150, 20), new Pole(2 * Math.PI * 157, 18));

    private static SpectralWindow window() {
        RandomGenerator chance = Chance.seeded(21);
        double[][] decays = new double[3][1600];
        for (double[] decay : decays) {
            for (Pole pole : POLES) {
                double phase = 6.28 * chance.nextDouble();
                for (int n = 0; n < decay.length; n++) {
                    double t = n / 2000.0;
                    decay[n] += Math.exp(-pole.sigma() * t) * Math.sin(pole.omega() * t + phase)
                            + 0.02 * chance.nextGaussian();
                }
            }
        }
        DecaySpectra spectra = new DecaySpectra(new Decays(2000, decays, List.of(100.0)));
        return SpectralWindow.of(spectra, 70, 220, List.of());
    }

    @Test
    void costWithoutAPoleIsThatOfTheFitWithoutIt() {
        PoleFit fit = new PoleFit(window(), POLES);
        for (int p = 0; p < POLES.size(); p++) {
            List<Pole> fewer = new ArrayList<>(POLES);
            fewer.remove(p);
            double longWay = new PoleFit(fit.window(), fewer).cost();
            assertThat(fit.costWithout(p)).isCloseTo(longWay, within(1e-9 * longWay));
        }
    }

    @Test
    void refinementBringsDisplacedPolesHome() {
        List<Pole> displaced = POLES.stream()
                .map(p -> new Pole(p.omega() * 1.004, p.sigma() * 1.2))
                .toList();
        PoleFit fit = PoleRefinement.refine(window(), displaced, 20);
        for (int p = 0; p < POLES.size(); p++) {
            assertThat(fit.poles().get(p).dampedHz()).isCloseTo(POLES.get(p).dampedHz(), within(0.2));
            assertThat(fit.poles().get(p).sigma()).isCloseTo(POLES.get(p).sigma(), within(1.0));
        }
    }
}
