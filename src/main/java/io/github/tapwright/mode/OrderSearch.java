package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Looks for the poles that explain a window best, and remembers every fit on the way.
 *
 * <p>A search that stops at the first pole that does not help ends anywhere; two recordings that differ by their
 * rounding alone would be given different models. So poles are added, taken away and moved about until nothing better
 * is found nearby. Where there is nothing left over to explain, this costs nothing.
 */
final class OrderSearch {

    private static final double[] TRIED_Q = {12, 35, 100, 300};
    private static final int PEAKS_TRIED = 6;
    private static final int PATIENCE = 2;
    private static final double HOPED_FOR = 3;
    private static final int MOST_SWAPS = 3;
    private static final int QUICK_STEPS = 4;
    private static final int THOROUGH_STEPS = 15;
    private static final int LAST_STEPS = 60;

    private final SpectralWindow window;
    private final List<PoleFit> visited = new ArrayList<>();
    private final Map<Integer, List<TrialPole>> trials = new HashMap<>();

    OrderSearch(SpectralWindow window) {
        this.window = window;
    }

    /** Every fit tried so far. */
    List<PoleFit> visited() {
        return visited;
    }

    /** The best fit of a window from first guesses, of which many may be too many. */
    PoleFit fromGuess(List<Pole> guess) {
        int bearable = window.rows() / 4;
        PoleFit rough = new PoleFit(window, guess.size() > bearable ? guess.subList(0, bearable) : guess);
        while (rough.poles().size() > mostPoles()) {
            rough = withOneLess(rough, 0);
        }
        return settle(PoleRefinement.refine(window, pruned(rough, 0).poles(), THOROUGH_STEPS));
    }

    /**
     * Takes away poles that are not needed, then adds some while that helps. A pole that does not help at once may do
     * so together with the next, so a few are added before the search gives up.
     */
    PoleFit settle(PoleFit start) {
        PoleFit best = grown(pruned(start, QUICK_STEPS));
        PoleFit swapped = swapped(best);
        for (int i = 0; i < MOST_SWAPS && OrderChoice.isBetter(swapped, best); i++) {
            best = grown(pruned(swapped, QUICK_STEPS));
            swapped = swapped(best);
        }
        return visit(
                OrderChoice.oneMoreMayEarn(best, best)
                        ? PoleRefinement.refine(window, best.poles(), LAST_STEPS)
                        : best);
    }

    private PoleFit grown(PoleFit start) {
        PoleFit best = start;
        PoleFit grown = best;
        for (int inVain = 0; inVain < PATIENCE && mayGrow(grown, best); ) {
            PoleFit more = withOneMore(grown);
            if (more == grown) {
                return best;
            }
            grown = more;
            if (OrderChoice.isBetter(grown, best)) {
                best = pruned(grown, QUICK_STEPS);
                grown = best;
                inVain = 0;
            } else {
                inVain++;
            }
        }
        return best;
    }

    private boolean mayGrow(PoleFit grown, PoleFit best) {
        return grown.poles().size() < mostPoles() && OrderChoice.oneMoreMayEarn(grown, best);
    }

    /** The pole that is missed least put where it helps most; the fit itself where nothing is to be gained. */
    private PoleFit swapped(PoleFit fit) {
        return fit.poles().isEmpty() || !OrderChoice.oneMoreMayEarn(fit, fit)
                ? fit
                : withOneMore(withOneLess(fit, QUICK_STEPS));
    }

    private PoleFit pruned(PoleFit start, int steps) {
        PoleFit best = start;
        PoleFit shrunk = start;
        for (int inVain = 0; inVain < PATIENCE && !shrunk.poles().isEmpty(); ) {
            shrunk = withOneLess(shrunk, steps);
            boolean better = OrderChoice.isBetter(shrunk, best);
            best = better ? shrunk : best;
            inVain = better ? 0 : inVain + (OrderChoice.oneMoreMayEarn(best, best) ? 1 : PATIENCE);
        }
        return best;
    }

    /** So many that each strike keeps twice as many numbers as are fitted to it. */
    private int mostPoles() {
        return Math.max(1, (window.rows() / 2 - window.companionCount()) / 4);
    }

    /**
     * Adds the pole that lowers the cost most, tried at the highest peaks left over and with several Q; the fit as it
     * is where that is hopeless, even if moving all poles then lowered the cost several times as much.
     */
    private PoleFit withOneMore(PoleFit fit) {
        Pole best = null;
        double most = 0;
        for (int bin : peaks(fit)) {
            for (TrialPole trial : trials.computeIfAbsent(bin, this::trials)) {
                double drop = fit.dropWith(trial);
                if (best == null || drop > most) {
                    most = drop;
                    best = trial.pole();
                }
            }
        }
        if (best == null || !OrderChoice.mayEarn(fit, HOPED_FOR * most)) {
            return fit;
        }
        List<Pole> poles = new ArrayList<>(fit.poles());
        poles.add(best);
        return visit(PoleRefinement.refine(window, poles, THOROUGH_STEPS));
    }

    /** At one place, more and less broad; peaks come back from fit to fit, so their columns are kept. */
    private List<TrialPole> trials(int bin) {
        double omega = window.shape().omega(bin);
        return DoubleStream.of(TRIED_Q)
                .mapToObj(q -> new TrialPole(window, new Pole(omega, omega / (2 * q))))
                .toList();
    }

    /** The highest local peaks of what is left over; at least one. */
    private static List<Integer> peaks(PoleFit fit) {
        double[] left = fit.powerLeft();
        int bins = left.length;
        double[] smooth = new double[bins];
        for (int k = 1; k + 1 < bins; k++) {
            smooth[k] = left[k - 1] + left[k] + left[k + 1];
        }
        return IntStream.range(1, bins - 1)
                .filter(k -> smooth[k] >= smooth[k - 1] && smooth[k] >= smooth[k + 1])
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -smooth[k]))
                .limit(PEAKS_TRIED)
                .toList();
    }

    private PoleFit visit(PoleFit fit) {
        visited.add(fit);
        return fit;
    }

    /** Leaves out the pole that is missed least. */
    private PoleFit withOneLess(PoleFit fit, int steps) {
        int least = IntStream.range(0, fit.poles().size())
                .boxed()
                .min(Comparator.comparingDouble(fit::costWithout))
                .orElseThrow();
        List<Pole> poles = new ArrayList<>(fit.poles());
        poles.remove(least);
        return visit(PoleRefinement.refine(window, poles, steps));
    }
}
