package io.github.tapwright.note;

import java.util.ArrayList;
import java.util.List;

/** Moves tones to where they explain a band best. Source: [Marquardt1963]. */
final class PartialRefinement {

    /** Nothing on a guitar rings for longer than two minutes or dies within 20 ms. */
    private static final double SMALLEST_SIGMA = 0.05;

    private static final double LARGEST_SIGMA = 350;
    private static final double LARGEST_LAMBDA = 1e6;
    private static final double LARGEST_LOG_STEP = 0.7;
    /** A fit whose squares a further step would lower by less than this share lies within 0.002 u of the best. */
    private static final double DONE = 1e-8;

    private PartialRefinement() {}

    /**
     * Refines.
     *
     * @param start first guess
     * @param steps how many steps at most
     * @return a fit at least as good as the start
     */
    static PartialFit refine(PartialFit start, int steps) {
        PartialFit best = start;
        Descent descent = best.descent();
        double lambda = 1e-3;
        for (int i = 0; i < steps && lambda < LARGEST_LAMBDA; i++) {
            double[] step = descent.step(lambda);
            if (step.length == 0 || descent.promise(step, lambda) < DONE * best.cost()) {
                return best;
            }
            PartialFit next = new PartialFit(best.band(), moved(best, step));
            if (next.cost() < best.cost()) {
                best = next;
                descent = best.descent();
                lambda = Math.max(1e-9, lambda / 8);
            } else {
                lambda *= 6;
            }
        }
        return best;
    }

    private static List<DecayingTone> moved(PartialFit fit, double[] step) {
        LineBand band = fit.band();
        List<DecayingTone> tones = new ArrayList<>();
        for (int m = 0; m < fit.tones().size(); m++) {
            DecayingTone tone = fit.tones().get(m);
            double omega = tone.omega() + step[2 * m];
            double logStep = Math.max(-LARGEST_LOG_STEP, Math.min(LARGEST_LOG_STEP, step[2 * m + 1]));
            double sigma = tone.sigma() * Math.exp(logStep);
            tones.add(new DecayingTone(
                    Math.max(2 * Math.PI * band.lowHz(), Math.min(2 * Math.PI * band.highHz(), omega)),
                    Math.max(SMALLEST_SIGMA, Math.min(LARGEST_SIGMA, sigma))));
        }
        return tones;
    }
}
