package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * One resonance's pole as the mean over the models that explain the band about equally well.
 *
 * <p>Choosing one of several nearly equal models would make the result jump with the last bit of the recording,
 * and its uncertainty would say nothing of the choice. Each model therefore counts with its weight
 * exp(−ΔBIC/2), and what the models disagree by joins the covariance. Source: [BurnhamAnderson2002], ch. 4 (from
 * memory, to be verified).
 */
final class ModelAverage {

    private static final double SAME_PLACE_WIDTHS = 0.5;
    private static final double SAME_DECAY_RATIO = 2;
    private static final double LEAST_SHARE = 0.5;

    private final List<Share> shares = new ArrayList<>();

    ModelAverage(Pole pole, List<Model> models) {
        for (Model model : models) {
            model.indexOf(pole)
                    .map(model::fromAllStarts)
                    .ifPresent(starts -> shares.add(new Share(starts, model.weight())));
        }
    }

    /**
     * One model of a band.
     *
     * @param poles of its fit
     * @param later the same poles from each later start
     * @param weight how far it is believed; of all models 1 together
     */
    record Model(List<PoleEstimate> poles, List<List<PoleEstimate>> later, double weight) {

        /** One of its poles from all starts. */
        StartTimeSpread fromAllStarts(int index) {
            return new StartTimeSpread(
                    poles.get(index), later.stream().map(l -> l.get(index)).toList());
        }

        /** Where a pole is found in this model. */
        Optional<Integer> indexOf(Pole pole) {
            int nearest = -1;
            double least = 1;
            for (int i = 0; i < poles.size(); i++) {
                double distance = distance(poles.get(i).pole(), pole);
                if (distance < least) {
                    least = distance;
                    nearest = i;
                }
            }
            return nearest < 0 ? Optional.empty() : Optional.of(nearest);
        }
    }

    private static double distance(Pole a, Pole b) {
        double widths = 2 * Math.abs(a.dampedHz() - b.dampedHz()) / (a.widthHz() + b.widthHz());
        return Math.hypot(widths / SAME_PLACE_WIDTHS, Math.log(a.sigma() / b.sigma()) / Math.log(SAME_DECAY_RATIO));
    }

    /** Whether models that see the pole again from a later start, and where it was, are believed more than the others. */
    boolean isSeenAgain() {
        return weightWhere(starts -> starts.isSeenAgain() && starts.stays()) > LEAST_SHARE;
    }

    /** Whether models that hold the pole, and hold it still from the later starts that see it, are believed more than the others. */
    boolean isBelieved() {
        return weightWhere(StartTimeSpread::stays) > LEAST_SHARE;
    }

    private double weightWhere(Predicate<StartTimeSpread> holds) {
        return shares.stream()
                .filter(s -> holds.test(s.starts()))
                .mapToDouble(Share::weight)
                .sum();
    }

    /** The mean (of ln σ and ω) over the models that hold the pole. */
    PoleEstimate mean() {
        double all = shares.stream().mapToDouble(Share::weight).sum();
        double logSigma = 0;
        double omega = 0;
        for (Share share : shares) {
            logSigma += share.weight() / all * Math.log(share.estimate().pole().sigma());
            omega += share.weight() / all * share.estimate().pole().omega();
        }
        Pole mean = new Pole(omega, Math.exp(logSigma));
        Covariance fit = Covariance.ZERO;
        Covariance strikes = Covariance.ZERO;
        Covariance model = Covariance.ZERO;
        for (Share share : shares) {
            PoleEstimate each = share.estimate();
            Covariance apart = Covariance.ofStep(
                    each.pole().sigma() - mean.sigma(), each.pole().omega() - omega);
            double weight = share.weight() / all;
            fit = fit.plus(each.fromFit(), weight);
            strikes = strikes.plus(each.fromStrikes(), weight);
            model = model.plus(each.fromModel(), weight).plus(apart, weight);
        }
        PoleEstimate first = shares.get(0).estimate();
        return new PoleEstimate(mean, fit, strikes, model, first.strikes(), first.strikesAtMost());
    }

    private record Share(StartTimeSpread starts, double weight, PoleEstimate estimate) {

        Share(StartTimeSpread starts, double weight) {
            this(starts, weight, starts.widened());
        }
    }
}
