package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * Decides how many resonances a window holds.
 *
 * <p>Orders are tried upwards, each refined, and judged by the Bayesian information criterion
 * n·ln(cost) + k·ln(n), with one thing more while what is left stands above the room's noise: a pole must explain at least 15 % of it. No
 * body is exactly a sum of decaying sines, and without that condition a quiet room would let the program
 * dress up the remainder as dozens of resonances. Then single poles are added where most is left over, and taken away where nothing is lost.
 * Source: [Schwarz1978].
 */
final class OrderChoice {

    private static final double NEAR_NOISE = 3;
    private static final double LEAST_SHARE = 0.15;
    private static final double PROMISING = 0.95;
    private static final double USUAL_Q = 30;
    private static final int MOST_POLES = 14;
    private static final int PATIENCE = 3;
    private static final int QUICK_STEPS = 4;
    private static final int THOROUGH_STEPS = 15;
    private static final int MOST_ADDED = 3;
    private static final double WIDEST_SIGMA_OF_OMEGA = 0.25;

    private OrderChoice() {}

    /**
     * Whether one fit is to be preferred to another: the one with more poles must earn them.
     *
     * @param candidate the fit in question
     * @param best the fit so far
     */
    static boolean isBetter(PoleFit candidate, PoleFit best) {
        int more = candidate.poles().size() - best.poles().size();
        if (more == 0) {
            return candidate.cost() < best.cost();
        }
        return more > 0 ? earnsItsPoles(candidate, best) : !earnsItsPoles(best, candidate);
    }

    private static boolean earnsItsPoles(PoleFit larger, PoleFit smaller) {
        double strikes = larger.window().strikes();
        double n = larger.window().rows() * strikes;
        double gain = n * Math.log(Math.max(smaller.cost(), 1e-300) / Math.max(larger.cost(), 1e-300));
        double price = (2 + 2 * strikes) * Math.log(n);
        boolean onlyNoiseLeft =
                smaller.noiseVariance() < NEAR_NOISE * smaller.window().noiseVariance();
        if (!onlyNoiseLeft) {
            price = Math.max(price, -n * Math.log(1 - LEAST_SHARE));
        }
        return gain > price * (larger.poles().size() - smaller.poles().size());
    }

    /** The best fit of a window, first guesses from the subspace method. */
    static PoleFit fromSubspace(SpectralWindow window, SubspacePoles subspace, double lowHz, double highHz) {
        PoleFit best = PoleRefinement.refine(window, List.of(), 0);
        int most = Math.min(MOST_POLES, Math.min(subspace.mostPoles(), mostPoles(window)));
        int without = 0;
        for (int count = 1; count <= most && without < PATIENCE; count++) {
            List<Pole> guess = plausible(subspace.poles(count), lowHz, highHz);
            PoleFit fit = PoleRefinement.refine(window, guess, QUICK_STEPS);
            without++;
            if (isBetter(fit, best)) {
                best = fit;
                without = 0;
            }
        }
        return settle(PoleRefinement.refine(window, best.poles(), THOROUGH_STEPS));
    }

    /** Adds poles while that helps, then takes away what is not needed. */
    static PoleFit settle(PoleFit start) {
        PoleFit best = start;
        for (int added = 0; added < MOST_ADDED && best.poles().size() < mostPoles(best.window()); added++) {
            PoleFit more = withOneMore(best);
            if (!isBetter(more, best)) {
                break;
            }
            best = more;
        }
        for (boolean changed = true; changed && !best.poles().isEmpty(); ) {
            PoleFit fewer = withOneLess(best);
            changed = isBetter(fewer, best);
            best = changed ? fewer : best;
        }
        return best;
    }

    /** So many that each strike keeps twice as many numbers as are fitted to it. */
    private static int mostPoles(SpectralWindow window) {
        return Math.max(1, (window.rows() / 2 - window.companions().size()) / 4);
    }

    private static List<Pole> plausible(List<Pole> poles, double lowHz, double highHz) {
        return poles.stream()
                .filter(p -> p.dampedHz() > lowHz && p.dampedHz() < highHz)
                .filter(p -> p.sigma() < WIDEST_SIGMA_OF_OMEGA * p.omega())
                .toList();
    }

    private static PoleFit withOneMore(PoleFit fit) {
        DMatrixRMaj left = fit.residual();
        int bins = left.numRows / 2;
        int peak = 0;
        double highest = -1;
        for (int k = 1; k + 1 < bins; k++) {
            double power = power(left, k - 1, bins) + power(left, k, bins) + power(left, k + 1, bins);
            if (power > highest) {
                highest = power;
                peak = k;
            }
        }
        double omega = fit.window().shape().omega(peak);
        List<Pole> poles = new ArrayList<>(fit.poles());
        poles.add(new Pole(omega, omega / (2 * USUAL_Q)));
        PoleFit quick = PoleRefinement.refine(fit.window(), poles, QUICK_STEPS);
        return quick.cost() < PROMISING * fit.cost()
                ? PoleRefinement.refine(fit.window(), quick.poles(), THOROUGH_STEPS)
                : quick;
    }

    private static double power(DMatrixRMaj left, int bin, int bins) {
        double sum = 0;
        for (int s = 0; s < left.numCols; s++) {
            sum += left.get(bin, s) * left.get(bin, s) + left.get(bin + bins, s) * left.get(bin + bins, s);
        }
        return sum;
    }

    /** Leaves out the pole that is missed least. */
    private static PoleFit withOneLess(PoleFit fit) {
        List<PoleFit> tries = new ArrayList<>();
        for (int m = 0; m < fit.poles().size(); m++) {
            List<Pole> poles = new ArrayList<>(fit.poles());
            poles.remove(m);
            tries.add(new PoleFit(fit.window(), poles));
        }
        PoleFit least =
                tries.stream().min(Comparator.comparingDouble(PoleFit::cost)).orElseThrow();
        return PoleRefinement.refine(fit.window(), least.poles(), QUICK_STEPS);
    }
}
