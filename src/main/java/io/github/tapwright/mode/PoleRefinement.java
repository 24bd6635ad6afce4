package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves poles to where they explain all strikes best: Levenberg and Marquardt's method on the projected
 * problem. Source: [Marquardt1963].
 */
final class PoleRefinement {

    private static final double SMALLEST_SIGMA = 0.2;
    private static final double LARGEST_LAMBDA = 1e7;

    private PoleRefinement() {}

    /**
     * Refines poles.
     *
     * @param window where
     * @param start first guesses
     * @param steps at most so many steps
     * @return the best fit found, never worse than the start
     */
    static PoleFit refine(SpectralWindow window, List<Pole> start, int steps) {
        PoleFit fit = new PoleFit(window, start);
        double lambda = 1e-3;
        for (int i = 0; i < steps && !start.isEmpty(); i++) {
            PoleFit.Normal normal = fit.normal();
            PoleFit better = null;
            while (better == null && lambda < LARGEST_LAMBDA) {
                List<Pole> moved = moved(fit.poles(), normal.step(lambda));
                if (!moved.isEmpty()) {
                    PoleFit candidate = new PoleFit(window, moved);
                    better = candidate.cost() < fit.cost() ? candidate : null;
                }
                lambda *= better == null ? 5 : 0.2;
            }
            if (better == null) {
                return fit;
            }
            boolean settled = fit.cost() - better.cost() < 1e-7 * fit.cost();
            fit = better;
            lambda = Math.max(lambda, 1e-9);
            if (settled) {
                return fit;
            }
        }
        return fit;
    }

    /** The poles after a step, empty if one would leave the plane of decaying oscillations. */
    private static List<Pole> moved(List<Pole> poles, double[] step) {
        List<Pole> moved = new ArrayList<>();
        for (int m = 0; m < poles.size() && step.length > 0; m++) {
            double sigma = poles.get(m).sigma() + step[2 * m];
            double omega = poles.get(m).omega() + step[2 * m + 1];
            if (!(sigma > SMALLEST_SIGMA) || !(omega > sigma)) {
                return List.of();
            }
            moved.add(new Pole(omega, sigma));
        }
        return moved;
    }
}
