package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;

/**
 * Settles how many resonances a window holds, starting from the poles that stabilised.
 *
 * <p>A pole is left out when nothing is lost by it, and one is added where most is left over, if that
 * earns its price: the Bayesian information criterion n·ln(cost) + k·ln(n). The cost has a floor, a thousandth of
 * the window's energy: no body is exactly a sum of decaying sines, and in a quiet room the program would
 * otherwise dress up that remainder as dozens of resonances. Source: [Schwarz1978].
 */
final class OrderChoice {

    private static final double MODEL_FLOOR = 1e-3;
    private static final double PROMISING = 0.95;
    private static final double USUAL_Q = 30;
    private static final double BEYOND_HZ = 25;
    private static final int QUICK_STEPS = 4;
    private static final int THOROUGH_STEPS = 15;
    private static final int MOST_ADDED = 3;

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
        double floor = MODEL_FLOOR * larger.window().energy() + 1e-300;
        double gain = n * Math.log((smaller.cost() + floor) / (larger.cost() + floor));
        double price = (2 + 2 * strikes) * Math.log(n);
        return gain > price * (larger.poles().size() - smaller.poles().size());
    }

    /** The best fit of a window, first guesses from the subspace method. */
    static PoleFit fromSubspace(SpectralWindow window, SubspacePoles subspace, double lowHz, double highHz) {
        List<Pole> stable = StablePoles.in(subspace, lowHz - BEYOND_HZ, highHz + BEYOND_HZ);
        int most = mostPoles(window);
        List<Pole> guess = stable.size() > most ? stable.subList(0, most) : stable;
        PoleFit rough = pruned(new PoleFit(window, guess), 0);
        return settle(PoleRefinement.refine(window, rough.poles(), THOROUGH_STEPS));
    }

    /** Takes away poles that are not needed, then adds some while that helps. */
    static PoleFit settle(PoleFit start) {
        PoleFit best = pruned(start, QUICK_STEPS);
        for (int added = 0; added < MOST_ADDED && best.poles().size() < mostPoles(best.window()); added++) {
            PoleFit more = withOneMore(best);
            if (!isBetter(more, best)) {
                return best;
            }
            best = pruned(more, QUICK_STEPS);
        }
        return best;
    }

    private static PoleFit pruned(PoleFit start, int steps) {
        PoleFit best = start;
        while (!best.poles().isEmpty()) {
            PoleFit fewer = withOneLess(best, steps);
            if (!isBetter(fewer, best)) {
                return best;
            }
            best = fewer;
        }
        return best;
    }

    /** So many that each strike keeps twice as many numbers as are fitted to it. */
    private static int mostPoles(SpectralWindow window) {
        return Math.max(1, (window.rows() / 2 - window.companions().size()) / 4);
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
    private static PoleFit withOneLess(PoleFit fit, int steps) {
        int least = IntStream.range(0, fit.poles().size())
                .boxed()
                .min(Comparator.comparingDouble(fit::costWithout))
                .orElseThrow();
        List<Pole> poles = new ArrayList<>(fit.poles());
        poles.remove(least);
        return PoleRefinement.refine(fit.window(), poles, steps);
    }
}
