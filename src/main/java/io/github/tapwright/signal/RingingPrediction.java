package io.github.tapwright.signal;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * Learns to predict free ringing by the covariance method: least squares over samples whose whole past is known.
 *
 * <p>The autocorrelation method of {@link LinearPrediction} takes a stretch for silent outside itself, so a decay that is
 * cut at its loudest is foretold only roughly, the lowest modes worst. Here nothing is assumed outside: p/2 decaying
 * sines are foretold down to the noise. Source: [Makhoul1975].
 */
public final class RingingPrediction {

    /** The bands above the decimation filter are empty; a trace of white noise keeps the equations regular. */
    private static final double WHITE_FLOOR = 1e-9;

    private static final double SYMMETRY = 1e-9;

    /** Σ x[n+i]·x[n+j], the oldest sample first: what is foretold stands last. */
    private final double[][] products;

    private final int order;

    /**
     * Nothing learnt yet.
     *
     * @param order how many samples back the predictor will look, p, at least 1
     */
    public RingingPrediction(int order) {
        this.order = order;
        products = new double[order + 1][order + 1];
    }

    /**
     * Learns from one more stretch of ringing.
     *
     * @param signal the samples
     * @param from first sample
     * @param to one past the last; a stretch no longer than the order teaches nothing
     */
    public void accumulate(double[] signal, int from, int to) {
        if (to > from + order) {
            HankelProducts.add(signal, from, to, 1, products);
        }
    }

    /** φ[i][j] = Σ x[n−i]·x[n−j], counted back from the sample that is foretold. */
    private double back(int i, int j) {
        return products[order - i][order - j];
    }

    /**
     * Whether no sound was heard yet.
     *
     * @return true if there is nothing to learn a predictor from
     */
    public boolean isSilent() {
        return back(0, 0) <= 0;
    }

    /**
     * The predictor that leaves the least mean square error over all stretches.
     *
     * @return of the order asked for
     * @throws IllegalStateException if all was silent
     */
    public LinearPrediction learn() {
        if (isSilent()) {
            throw new IllegalStateException("silence teaches no predictor");
        }
        Array2DRowRealMatrix past = new Array2DRowRealMatrix(order, order);
        double[] present = new double[order];
        for (int i = 0; i < order; i++) {
            for (int j = 0; j < order; j++) {
                past.setEntry(i, j, back(i + 1, j + 1) + (i == j ? WHITE_FLOOR * back(0, 0) : 0));
            }
            present[i] = -back(i + 1, 0);
        }
        double[] solved = new CholeskyDecomposition(past, SYMMETRY, 0)
                .getSolver()
                .solve(new ArrayRealVector(present))
                .toArray();
        double[] coefficients = new double[order + 1];
        coefficients[0] = 1;
        System.arraycopy(solved, 0, coefficients, 1, order);
        return new LinearPrediction(coefficients);
    }
}
