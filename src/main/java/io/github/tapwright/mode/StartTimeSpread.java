package io.github.tapwright.mode;

import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.function.Function;

/**
 * How far a resonance moves when the decay is read from a later start.
 *
 * <p>A decaying sine looks the same from any start; what is only a patch on a more complicated sound does
 * not. Each band is therefore fitted again with its first 15, 30 and 50 ms left out. Losing data moves a result by chance,
 * with variance u²(later) − u²(full) [Hausman1978]; a shift beyond what that allows (two standard deviations) is the model's own
 * error, and its size joins the standard uncertainty.
 *
 * <p>Where a mode has drowned in the noise, a fit catches hold of the noise instead. A start therefore says the less of a mode the less
 * sure ln σ is from there, and nothing from 0.4 on, nor do those after it. The say fades, because a jump would let two nearly equal
 * recordings give different results.
 */
final class StartTimeSpread {

    private static final List<Double> LATER_SECONDS = List.of(0.015, 0.030, 0.050);
    private static final double LEAST_CHANCE = 0.1;
    private static final double MOST_LEFT_OUT = 0.2;
    private static final int STEPS = 40;
    private static final double CHANCE_SIGMAS = 2;
    private static final double FARTHEST_WIDTHS = 0.5;

    /** Standard uncertainty of ln σ at which a start says nothing any more. */
    private static final double DROWNED = 0.4;

    private final PoleEstimate here;
    private final boolean hasLaterStarts;
    private final List<PoleEstimate> later;

    /**
     * One pole from all starts.
     *
     * @param here from the whole decays
     * @param later from each later start
     */
    StartTimeSpread(PoleEstimate here, List<PoleEstimate> later) {
        this.here = here;
        this.hasLaterStarts = !later.isEmpty();
        this.later = later.stream().takeWhile(there -> say(there) > 0).toList();
    }

    /**
     * The decays from later starts.
     *
     * @param spectra of the whole decays
     * @return one for each start that leaves four fifths of the decay or more
     */
    static List<DecaySpectra> laterStarts(DecaySpectra spectra) {
        return LATER_SECONDS.stream()
                .filter(seconds -> seconds < MOST_LEFT_OUT * spectra.seconds())
                .map(spectra::later)
                .toList();
    }

    /**
     * Fits a band again from later starts. No start's work depends on another's, so they may be worked on side by side.
     *
     * @param spectra of the whole decays
     * @param laterStarts the same from later starts
     * @param fit the band's fit
     * @param outside poles outside the band, subtracted as in the fit
     * @param lowHz lower edge
     * @param highHz upper edge
     * @return one fit for each start, poles in the order of the fit
     */
    static List<PoleFit> laterFits(
            DecaySpectra spectra,
            List<DecaySpectra> laterStarts,
            PoleFit fit,
            List<SharedMode> outside,
            double lowHz,
            double highHz) {
        return laterStarts.stream()
                .parallel()
                .map(later -> {
                    double seconds = spectra.seconds() - later.seconds();
                    List<SharedMode> decayed =
                            outside.stream().map(m -> m.later(seconds)).toList();
                    SpectralWindow window = SpectralWindow.of(later, lowHz, highHz, decayed);
                    return PoleRefinement.refine(window, fit.poles(), STEPS);
                })
                .toList();
    }

    /** Whether some later start says something of the pole, or none can be asked in so short a decay. */
    boolean isSeenAgain() {
        return !hasLaterStarts || !later.isEmpty();
    }

    /** Whether the pole is still where it was, within half its width and what noise allows. */
    boolean stays() {
        double width = here.pole().widthHz();
        double hz = here.pole().naturalHz();
        return later.stream()
                .map(PoleEstimate::frequencyHz)
                .allMatch(there -> Math.abs(there.value() - hz)
                        < FARTHEST_WIDTHS * width + CHANCE_SIGMAS * there.standardUncertainty());
    }

    /** The mean of the pole (of ln σ and ω) over the starts, what chance does not explain of their spread in its covariance. */
    PoleEstimate widened() {
        double[] bySigma = shifts(here.logSigma(), PoleEstimate::logSigma);
        double[] byOmega = shifts(here.omega(), PoleEstimate::omega);
        double says = later.stream().mapToDouble(StartTimeSpread::say).sum();
        double meanSigma = 0;
        double meanOmega = 0;
        for (int i = 0; i < later.size(); i++) {
            meanSigma += say(later.get(i)) * bySigma[i] / (says + 1);
            meanOmega += say(later.get(i)) * byOmega[i] / (says + 1);
        }
        double sigma = here.pole().sigma();
        Covariance spread = Covariance.ofStep(sigma * meanSigma, meanOmega);
        for (int i = 0; i < later.size(); i++) {
            Covariance apart = Covariance.ofStep(sigma * (bySigma[i] - meanSigma), byOmega[i] - meanOmega);
            spread = spread.plus(apart, say(later.get(i)));
        }
        return new PoleEstimate(
                new Pole(here.pole().omega() + meanOmega, sigma * Math.exp(meanSigma)),
                here.fromFit(),
                here.fromStrikes(),
                Covariance.ZERO.plus(spread, 1 / Math.max(1, says)),
                here.strikes(),
                here.strikesAtMost());
    }

    private double[] shifts(Estimate own, Function<PoleEstimate, Estimate> quantity) {
        return later.stream()
                .mapToDouble(there -> beyondChance(own, quantity.apply(there)))
                .toArray();
    }

    /** How much a start says of a pole, from 1 where it is well known down to 0 where it has drowned. */
    private static double say(PoleEstimate there) {
        double unsure = there.logSigma().standardUncertainty() / DROWNED;
        return Math.max(0, 1 - unsure * unsure);
    }

    /**
     * What of a shift chance does not explain: nothing within two standard deviations, nearly all of it far
     * beyond. A jump at the limit would let two nearly equal recordings give different results.
     */
    private static double beyondChance(Estimate here, Estimate there) {
        double ownVariance = Math.pow(here.standardUncertainty(), 2);
        double laterVariance = Math.pow(there.standardUncertainty(), 2);
        double chance = Math.max(LEAST_CHANCE * ownVariance, laterVariance - ownVariance);
        double shift = there.value() - here.value();
        return shift == 0 ? 0 : shift * Math.max(0, 1 - CHANCE_SIGMAS * CHANCE_SIGMAS * chance / (shift * shift));
    }
}
