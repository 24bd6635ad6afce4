package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * Numbers that follow from a fitted partial, each with its standard uncertainty.
 *
 * <p>First-order propagation, u² = gᵀ·C·g with C = s²(JᵀJ)⁻¹ over all numbers of the partial, slow columns projected
 * out, and g by central differences. s² is the variance of what is left over; where the rows on the line are left with
 * more than chance gives them (1 % level), it is theirs, because then the model is at fault and not the noise. Source:
 * [GUM], 5.1.2.
 */
final class PartialEstimates {

    private static final double CHANCE = 0.99;
    private static final double LINE_WIDTHS = 1.5;
    private static final int FEWEST_BINS = 6;

    private final double[] parameters;
    private final DMatrixRMaj covariance;
    private final double variance;
    private final double degreesOfFreedom;

    PartialEstimates(PartialFit fit) {
        int tones = fit.tones().size();
        parameters = new double[4 * tones];
        for (int m = 0; m < tones; m++) {
            parameters[2 * m] = fit.cosine(m);
            parameters[2 * m + 1] = fit.sine(m);
            parameters[2 * tones + 2 * m] = fit.tones().get(m).omega();
            parameters[2 * tones + 2 * m + 1] = Math.log(fit.tones().get(m).sigma());
        }
        covariance = fit.unitCovariance();
        double overall = fit.cost() / fit.degreesOfFreedom();
        OnLine onLine = OnLine.of(fit);
        double limit = new FDistribution(onLine.rows(), fit.degreesOfFreedom()).inverseCumulativeProbability(CHANCE);
        boolean misfit = onLine.meanSquare() > limit * overall;
        variance = misfit ? onLine.meanSquare() : overall;
        degreesOfFreedom = misfit ? onLine.rows() : fit.degreesOfFreedom();
    }

    /**
     * A number that follows from the parameters.
     *
     * @param number takes a view of the tones
     * @return its estimate, empty if the recording does not determine it
     */
    Optional<Estimate> of(ToDoubleFunction<ToneView> number) {
        double value = number.applyAsDouble(new ToneView(parameters));
        double[] slope = new double[parameters.length];
        if (covariance.numRows != parameters.length) {
            return Optional.empty();
        }
        for (int i = 0; i < slope.length; i++) {
            double step =
                    0.02 * Math.sqrt(Math.max(0, variance * covariance.get(i, i))) + 1e-9 * Math.abs(parameters[i]);
            double[] up = parameters.clone();
            double[] down = parameters.clone();
            up[i] += step;
            down[i] -= step;
            double rise = number.applyAsDouble(new ToneView(up)) - number.applyAsDouble(new ToneView(down));
            slope[i] = step == 0 ? 0 : rise / (2 * step);
        }
        double sum = 0;
        for (int i = 0; i < slope.length; i++) {
            for (int j = 0; j < slope.length; j++) {
                sum += slope[i] * slope[j] * covariance.get(i, j);
            }
        }
        double uncertainty = Math.sqrt(Math.max(0, variance * sum));
        return Double.isFinite(value) && Double.isFinite(uncertainty)
                ? Optional.of(new Estimate(value, uncertainty, degreesOfFreedom))
                : Optional.empty();
    }

    /** What is left over on the line itself. */
    private record OnLine(double meanSquare, int rows) {

        static OnLine of(PartialFit fit) {
            LineBand band = fit.band();
            double[] reachHz = fit.tones().stream()
                    .mapToDouble(t -> Math.max(FEWEST_BINS / 2.0 * band.binHz(), LINE_WIDTHS * t.widthHz()))
                    .toArray();
            double sum = 0;
            int rows = 0;
            for (int i = 0; i < band.bins(); i++) {
                if (isNear(fit.tones(), reachHz, band.hz(i))) {
                    sum += fit.residual(i) * fit.residual(i)
                            + fit.residual(i + band.bins()) * fit.residual(i + band.bins());
                    rows += 2;
                }
            }
            // The fitted numbers are spent on the line.
            int free = Math.max(2, rows - 4 * fit.tones().size());
            return new OnLine(sum / free, free);
        }

        private static boolean isNear(List<DecayingTone> tones, double[] reachHz, double hz) {
            for (int m = 0; m < reachHz.length; m++) {
                if (Math.abs(tones.get(m).hz() - hz) <= reachHz[m]) {
                    return true;
                }
            }
            return false;
        }
    }
}
