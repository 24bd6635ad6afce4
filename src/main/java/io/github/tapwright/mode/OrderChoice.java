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
    private static final double[] TRIED_Q = {12, 35, 100, 300};
    private static final int PEAKS_TRIED = 6;
    private static final int PATIENCE = 2;
    private static final int MOST_SWAPS = 3;
    private static final int QUICK_STEPS = 4;
    private static final int THOROUGH_STEPS = 15;
    private static final int LAST_STEPS = 60;

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
        int more = larger.poles().size() - smaller.poles().size();
        return gain(larger.window(), smaller.cost(), larger.cost()) > more * price(larger.window());
    }

    private static double gain(SpectralWindow window, double from, double to) {
        double floor = MODEL_FLOOR * window.energy() + 1e-300;
        return numbers(window) * Math.log((from + floor) / (to + floor));
    }

    private static double price(SpectralWindow window) {
        return (2 + 2.0 * window.strikes()) * Math.log(numbers(window));
    }

    private static double numbers(SpectralWindow window) {
        return (double) window.rows() * window.strikes();
    }

    /** The best fit of a window from first guesses, of which many may be too many. */
    static PoleFit fromGuess(SpectralWindow window, List<Pole> guess) {
        int bearable = window.rows() / 4;
        PoleFit rough = new PoleFit(window, guess.size() > bearable ? guess.subList(0, bearable) : guess);
        while (rough.poles().size() > mostPoles(window)) {
            rough = withOneLess(rough, 0);
        }
        return settle(PoleRefinement.refine(window, pruned(rough, 0).poles(), THOROUGH_STEPS));
    }

    /**
     * Takes away poles that are not needed, then adds some while that helps. A pole that does not help at once may do
     * so together with the next, so a few are added before the search gives up.
     */
    static PoleFit settle(PoleFit start) {
        PoleFit best = grown(pruned(start, QUICK_STEPS));
        PoleFit swapped = swapped(best);
        for (int i = 0; i < MOST_SWAPS && isBetter(swapped, best); i++) {
            best = grown(pruned(swapped, QUICK_STEPS));
            swapped = swapped(best);
        }
        return PoleRefinement.refine(best.window(), best.poles(), LAST_STEPS);
    }

    private static PoleFit grown(PoleFit start) {
        PoleFit best = start;
        PoleFit grown = best;
        int most = mostPoles(best.window());
        for (int inVain = 0; inVain < PATIENCE && grown.poles().size() < most && oneMoreMayEarn(grown, best); ) {
            grown = withOneMore(grown);
            if (isBetter(grown, best)) {
                best = pruned(grown, QUICK_STEPS);
                grown = best;
                inVain = 0;
            } else {
                inVain++;
            }
        }
        return best;
    }

    /** The pole that is missed least put where it helps most; the fit itself where nothing is to be gained. */
    private static PoleFit swapped(PoleFit fit) {
        return fit.poles().isEmpty() || !oneMoreMayEarn(fit, fit) ? fit : withOneMore(withOneLess(fit, QUICK_STEPS));
    }

    /** Whether one pole more would earn its price if it left nothing over at all. */
    static boolean oneMoreMayEarn(PoleFit grown, PoleFit best) {
        int more = grown.poles().size() + 1 - best.poles().size();
        return gain(best.window(), best.cost(), 0) > more * price(best.window());
    }

    private static PoleFit pruned(PoleFit start, int steps) {
        PoleFit best = start;
        PoleFit shrunk = start;
        for (int inVain = 0; inVain < PATIENCE && !shrunk.poles().isEmpty(); ) {
            shrunk = withOneLess(shrunk, steps);
            boolean better = isBetter(shrunk, best);
            best = better ? shrunk : best;
            inVain = better ? 0 : inVain + (oneMoreMayEarn(best, best) ? 1 : PATIENCE);
        }
        return best;
    }

    /** So many that each strike keeps twice as many numbers as are fitted to it. */
    private static int mostPoles(SpectralWindow window) {
        return Math.max(1, (window.rows() / 2 - window.companions().size()) / 4);
    }

    /** Adds the pole that lowers the cost most, tried at the highest peaks left over and with several Q. */
    private static PoleFit withOneMore(PoleFit fit) {
        Pole best = null;
        double most = 0;
        for (int bin : peaks(fit.residual())) {
            double omega = fit.window().shape().omega(bin);
            for (double q : TRIED_Q) {
                Pole pole = new Pole(omega, omega / (2 * q));
                double drop = fit.dropWith(pole);
                if (best == null || drop > most) {
                    most = drop;
                    best = pole;
                }
            }
        }
        List<Pole> poles = new ArrayList<>(fit.poles());
        poles.add(best);
        return PoleRefinement.refine(fit.window(), poles, THOROUGH_STEPS);
    }

    /** The highest local peaks of what is left over; at least one. */
    private static List<Integer> peaks(DMatrixRMaj left) {
        int bins = left.numRows / 2;
        double[] smooth = new double[bins];
        for (int k = 1; k + 1 < bins; k++) {
            smooth[k] = power(left, k - 1, bins) + power(left, k, bins) + power(left, k + 1, bins);
        }
        return IntStream.range(1, bins - 1)
                .filter(k -> smooth[k] >= smooth[k - 1] && smooth[k] >= smooth[k + 1])
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -smooth[k]))
                .limit(PEAKS_TRIED)
                .toList();
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
