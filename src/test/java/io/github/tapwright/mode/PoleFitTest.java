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
    void whatOnePoleMoreWouldTakeAwayIsWhatItTakesAway() {
        SpectralWindow window = window();
        PoleFit fit = new PoleFit(window, POLES.subList(0, 2));
        double longWay = fit.cost() - new PoleFit(window, POLES).cost();
        double shortCut = fit.dropWith(new TrialPole(window, POLES.get(2)));
        assertThat(shortCut).isCloseTo(longWay, within(1e-9 * fit.cost()));
    }

    @Test
    void aPoleTheFitAlreadyHasTakesNothingAway() {
        SpectralWindow window = window();
        PoleFit fit = new PoleFit(window, POLES);
        assertThat(fit.dropWith(new TrialPole(window, POLES.get(1)))).isZero();
    }

    /** Two poles a thousandth of a hertz apart leave little but rounding to tell them by; the fit must not be led astray. */
    @Test
    void nearlyEqualPolesLeaveTheCostWhatItIs() {
        SpectralWindow window = window();
        Pole first = POLES.get(0);
        List<Pole> crowded = new ArrayList<>(POLES);
        crowded.add(new Pole(first.omega() + 2 * Math.PI * 0.001, first.sigma()));
        PoleFit plain = new PoleFit(window, POLES);
        PoleFit fit = new PoleFit(window, crowded);

        assertThat(fit.cost()).isBetween(0.5 * plain.cost(), plain.cost() * (1 + 1e-9));
        PoleFit.Normal normal = fit.normal();
        for (int i = 0; i < 2 * crowded.size(); i++) {
            assertThat(normal.curvature().get(i, i)).isPositive();
        }
        assertThat(PoleRefinement.refine(window, crowded, 5).cost()).isLessThanOrEqualTo(fit.cost());
    }

    @Test
    void theNormalEquationsAreTheSlopeOfTheCost() {
        SpectralWindow window = window();
        List<Pole> displaced =
                POLES.stream().map(p -> new Pole(p.omega() * 1.002, p.sigma())).toList();
        PoleFit fit = new PoleFit(window, displaced);
        PoleFit.Normal normal = fit.normal();
        for (int p = 0; p < displaced.size(); p++) {
            double step = 1e-4;
            List<Pole> up = new ArrayList<>(displaced);
            List<Pole> down = new ArrayList<>(displaced);
            up.set(p, new Pole(displaced.get(p).omega() + step, displaced.get(p).sigma()));
            down.set(
                    p,
                    new Pole(displaced.get(p).omega() - step, displaced.get(p).sigma()));
            double slope = (new PoleFit(window, up).cost() - new PoleFit(window, down).cost()) / (2 * step);
            double pull = 0;
            for (int s = 0; s < window.strikes(); s++) {
                pull += normal.slopes().get(2 * p + 1, s);
            }
            // the projected problem's exact slope: −2·Jᵀr
            assertThat(-2 * pull).isCloseTo(slope, within(1e-4 * Math.abs(slope) + 1e-9 * fit.cost()));
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
