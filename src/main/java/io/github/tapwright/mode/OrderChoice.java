package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Settles which fit of a window is to be believed, and how far its rivals.
 *
 * <p>A pole must earn its price by the Bayesian information criterion n·ln(cost) + k·ln(n). The cost has a floor, a
 * thousandth of the window's energy: no body is exactly a sum of decaying sines, and in a quiet room the program would
 * otherwise dress up that remainder as dozens of resonances. Source: [Schwarz1978].
 */
final class OrderChoice {

    private static final double MODEL_FLOOR = 1e-3;
    private static final double FARTHEST_RIVAL = 8;
    private static final double UNSETTLED = 6;
    private static final double SAME_COST = 1e-3;
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

    /** Whether one pole more would earn its price if it left nothing over at all. */
    static boolean oneMoreMayEarn(PoleFit grown, PoleFit best) {
        int more = grown.poles().size() + 1 - best.poles().size();
        return gain(best.window(), best.cost(), 0) > more * price(best.window());
    }

    /** Whether one pole more would earn its price if it lowered the cost by so much. */
    static boolean mayEarn(PoleFit fit, double drop) {
        return gain(fit.window(), fit.cost(), Math.max(0, fit.cost() - drop)) > price(fit.window());
    }

    /** The criterion: the less, the better. */
    private static double criterion(PoleFit fit) {
        return gain(fit.window(), fit.cost(), 0)
                + price(fit.window()) * fit.poles().size();
    }

    /**
     * The fits that are nearly as good as the best, each settled and once only, with their weights exp(−ΔBIC/2), which
     * fade to nothing where the criterion is worse by {@value #FARTHEST_RIVAL}.
     *
     * @param visited fits of one window, at least one
     * @return best first, weights of 1 together
     */
    static List<Rival> rivals(List<PoleFit> visited) {
        double least =
                visited.stream().mapToDouble(OrderChoice::criterion).min().orElseThrow();
        List<PoleFit> settled = new ArrayList<>();
        visited.stream()
                .filter(f -> criterion(f) < least + FARTHEST_RIVAL + UNSETTLED)
                .sorted(Comparator.comparingDouble(OrderChoice::criterion))
                .filter(f -> settled.stream().noneMatch(s -> isSame(s, f)))
                .map(f -> oneMoreMayEarn(f, f) ? PoleRefinement.refine(f.window(), f.poles(), LAST_STEPS) : f)
                .filter(f -> settled.stream().noneMatch(s -> isSame(s, f)))
                .forEach(settled::add);
        settled.sort(Comparator.comparingDouble(OrderChoice::criterion));
        double[] weights =
                settled.stream().mapToDouble(f -> weight(f, settled.get(0))).toArray();
        double all = Arrays.stream(weights).sum();
        List<Rival> rivals = new ArrayList<>();
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > 0) {
                rivals.add(new Rival(settled.get(i), weights[i] / all));
            }
        }
        return rivals;
    }

    /**
     * A fit that is nearly as good as the best, or the best itself.
     *
     * @param fit the fit
     * @param weight how far it is believed; of all rivals 1 together
     */
    record Rival(PoleFit fit, double weight) {}

    private static double weight(PoleFit fit, PoleFit best) {
        double behind = criterion(fit) - criterion(best);
        return Math.max(0, Math.exp(-behind / 2) - Math.exp(-FARTHEST_RIVAL / 2));
    }

    private static boolean isSame(PoleFit a, PoleFit b) {
        return a.poles().size() == b.poles().size() && Math.abs(a.cost() - b.cost()) < SAME_COST * b.cost();
    }
}
