package io.github.tapwright.note;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Settles whether a band holds a partial, and whether one decaying sine or two explain it.
 *
 * <p>Every further sine must earn its four numbers by the Bayesian information criterion, n·ln(cost) + k·ln(n) with n
 * rows and k numbers. Source: [Schwarz1978]. The cost has a floor of 10⁻⁷ of the band's energy, so that the rounding of a
 * noiseless signal is not explained too.
 */
final class PartialChoice {

    private static final double MODEL_FLOOR = 1e-7;
    private static final double NUMBERS = 4;
    private static final double[] FIRST_SIGMAS = {0.4, 1.2, 3.5, 10, 30, 80};
    private static final int ROUGH_STEPS = 4;
    private static final int FIRST_STEPS = 3;
    private static final int QUICK_STEPS = 4;
    private static final int THOROUGH_STEPS = 50;

    /** Refining a guess of two real lines adds next to nothing, and such lines explain far more than chance would. */
    private static final double SETTLED = 0.95;

    private static final double PLAIN = 4;

    private PartialChoice() {}

    /**
     * A first single sine of a band, to be fitted more closely once its neighbours are known.
     *
     * @param band where to look
     * @param hz where the partial is expected
     * @return the fit, empty if noise explains the band as well
     */
    static Optional<PartialFit> rough(LineBand band, double hz) {
        return Arrays.stream(FIRST_SIGMAS)
                .mapToObj(sigma -> new PartialFit(band, List.of(DecayingTone.of(hz, sigma))))
                .min(Comparator.comparingDouble(PartialFit::cost))
                .flatMap(start -> refined(start, ROUGH_STEPS));
    }

    /**
     * The best single sine of a band.
     *
     * @param band where to look
     * @param near what it is known to be like
     * @return the fit, empty if noise explains the band as well
     */
    static Optional<PartialFit> one(LineBand band, DecayingTone near) {
        return refined(new PartialFit(band, List.of(near)), THOROUGH_STEPS);
    }

    private static Optional<PartialFit> refined(PartialFit start, int steps) {
        LineBand band = start.band();
        PartialFit refined = PartialRefinement.refine(start, steps);
        return earns(refined, new PartialFit(band, List.of())) ? Optional.of(refined) : Optional.empty();
    }

    /**
     * One sine or two.
     *
     * <p>Where two lines are plain, {@link PairGuess} has them; of 1,219 partials of 52 real notes, 287 were settled so, none of
     * them worse than by searching. Elsewhere the cost has several valleys, and each of many starts may find the lowest.
     *
     * @param one the best single sine
     * @return the better explanation
     */
    static PartialFit oneOrTwo(PartialFit one) {
        Optional<PartialFit> guess = PairGuess.of(one).map(pair -> new PartialFit(one.band(), pair));
        PartialFit two = guess.flatMap(g -> plain(g, one)).orElseGet(() -> searched(one, guess));
        return earns(two, one) ? two : one;
    }

    private static Optional<PartialFit> plain(PartialFit guess, PartialFit one) {
        if (gain(guess, one) < PLAIN * price(guess, one)) {
            return Optional.empty();
        }
        PartialFit refined = PartialRefinement.refine(guess, THOROUGH_STEPS);
        return gain(guess, one) > SETTLED * gain(refined, one) ? Optional.of(refined) : Optional.empty();
    }

    private static PartialFit searched(PartialFit one, Optional<PartialFit> guess) {
        List<PartialFit> starts = Stream.concat(
                        guess.stream(), pairs(one).stream().map(pair -> new PartialFit(one.band(), pair)))
                .toList();
        List<PartialFit> promising = best(2, best(4, starts, FIRST_STEPS), QUICK_STEPS);
        return PartialRefinement.refine(promising.get(0), THOROUGH_STEPS);
    }

    /** The best few of some fits, a few steps further on, best first. */
    private static List<PartialFit> best(int few, List<PartialFit> fits, int steps) {
        return fits.stream()
                .sorted(Comparator.comparingDouble(PartialFit::cost))
                .limit(few)
                .map(fit -> PartialRefinement.refine(fit, steps))
                .sorted(Comparator.comparingDouble(PartialFit::cost))
                .toList();
    }

    private static boolean earns(PartialFit larger, PartialFit smaller) {
        return gain(larger, smaller) > price(larger, smaller);
    }

    private static double gain(PartialFit larger, PartialFit smaller) {
        double floor = MODEL_FLOOR * larger.band().energy() + 1e-300;
        return larger.band().rows().length * Math.log((smaller.cost() + floor) / (larger.cost() + floor));
    }

    private static double price(PartialFit larger, PartialFit smaller) {
        double rows = larger.band().rows().length;
        return NUMBERS
                * Math.log(rows)
                * (larger.tones().size() - smaller.tones().size());
    }

    /** Starts: fast and slow at one place, whichever of them the single sine took; equals a little apart; where most is left. */
    private static List<List<DecayingTone>> pairs(PartialFit one) {
        DecayingTone tone = one.tones().get(0);
        double apartHz = Math.max(0.3 * tone.widthHz(), 0.5 * one.band().binHz());
        List<List<DecayingTone>> starts = new ArrayList<>();
        starts.add(pair(tone, 0.1 * apartHz, 3, 0.6));
        starts.add(pair(tone, -0.1 * apartHz, 8, 0.9));
        starts.add(pair(tone, 0.1 * apartHz, 1.1, 0.08));
        starts.add(pair(tone, apartHz, 1.2, 0.8));
        starts.add(pair(tone, -apartHz, 1.2, 0.8));
        starts.add(List.of(tone, DecayingTone.of(leftOverHz(one), tone.sigma())));
        return starts;
    }

    private static List<DecayingTone> pair(DecayingTone tone, double apartHz, double faster, double slower) {
        return List.of(
                DecayingTone.of(tone.hz() + apartHz / 2, tone.sigma() * faster),
                DecayingTone.of(tone.hz() - apartHz / 2, tone.sigma() * slower));
    }

    private static double leftOverHz(PartialFit fit) {
        int bins = fit.band().bins();
        int peak = 0;
        double highest = -1;
        for (int i = 0; i < bins; i++) {
            double power = fit.residual(i) * fit.residual(i) + fit.residual(bins + i) * fit.residual(bins + i);
            if (power > highest) {
                highest = power;
                peak = i;
            }
        }
        return fit.band().hz(peak);
    }
}
