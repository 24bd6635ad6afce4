package io.github.tapwright.mode;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.signal.HankelProducts;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * First guesses of shared poles in a band by the subspace method: the Hankel matrices of all strikes are
 * stacked, their common signal space found, and the poles read from its shift invariance (ESPRIT).
 *
 * <p>The band is cut out of the spectra with soft edges, moved down to low frequency and thereby
 * decimated. Its edges ring for a moment at the start and end of the stretch, so those are left out; the
 * refinement that follows has no such loss. Source: [RoyKailath1989].
 */
final class SubspacePoles {

    private static final double EDGE_HZ = 30;
    private static final double SKIP_SECONDS = 0.012;
    private static final int GUARD_BINS = 2;
    private static final int MOST_POLES = 16;
    private static final double SMALLEST = 1e-12;

    private final int height;
    private final DMatrixRMaj shifted;
    private final double[] lastRow;
    private final double rateHz;
    private final double shiftHz;

    /**
     * Finds the common signal space of a band.
     *
     * @param spectra the decays' spectra
     * @param lowHz lower edge of the band
     * @param highHz upper edge
     */
    SubspacePoles(DecaySpectra spectra, double lowHz, double highHz) {
        int first = spectra.bin(lowHz - EDGE_HZ);
        int last = spectra.bin(highHz + EDGE_HZ);
        int samples = 2 * (last - first + 1 + 2 * GUARD_BINS);
        rateHz = samples / spectra.seconds();
        shiftHz = (first - GUARD_BINS) * spectra.binHz();
        int skip = (int) Math.min(samples / 8.0, Math.ceil(SKIP_SECONDS * rateHz));
        int kept = samples - 2 * skip;
        height = Math.min(kept / 2, 80);
        double[][] covariance = new double[height][height];
        Fourier fourier = new Fourier(samples);
        for (int s = 0; s < spectra.strikes(); s++) {
            double[] band = new double[2 * samples];
            for (int k = first; k <= last; k++) {
                double weight = edge(k * spectra.binHz(), lowHz, highHz);
                int to = 2 * (k - first + GUARD_BINS);
                band[to] = weight * spectra.spectrum(s)[2 * k];
                band[to + 1] = weight * spectra.spectrum(s)[2 * k + 1];
            }
            addHankel(covariance, fourier.realFromOneSided(band), skip, kept);
        }
        DMatrixRMaj space = eigenvectorsLargestFirst(new DMatrixRMaj(covariance), 2 * mostPoles());
        lastRow = CommonOps_DDRM.extractRow(space, height - 1, null).data;
        shifted = productWithShifted(space);
    }

    private static double edge(double hz, double lowHz, double highHz) {
        double x = Math.min(hz - (lowHz - EDGE_HZ), highHz + EDGE_HZ - hz) / EDGE_HZ;
        return 0.5 - 0.5 * Math.cos(Math.PI * Math.max(0, Math.min(1, x)));
    }

    /** However strong a strike was, it weighs the same. */
    private static void addHankel(double[][] covariance, double[] y, int skip, int kept) {
        double energy = 1e-300;
        for (int n = 0; n < kept; n++) {
            energy += y[skip + n] * y[skip + n];
        }
        HankelProducts.add(y, skip, skip + kept, energy, covariance);
    }

    private static DMatrixRMaj eigenvectorsLargestFirst(DMatrixRMaj covariance, int count) {
        int n = covariance.numRows;
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(n, true, true);
        eigen.decompose(covariance);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            order.add(i);
        }
        order.sort((a, b) -> Double.compare(
                eigen.getEigenvalue(b).getReal(), eigen.getEigenvalue(a).getReal()));
        DMatrixRMaj vectors = new DMatrixRMaj(n, count);
        for (int c = 0; c < count; c++) {
            CommonOps_DDRM.insert(eigen.getEigenVector(order.get(c)), vectors, 0, c);
        }
        return vectors;
    }

    /** Uᵀ·L of a space's rows without the last, U, and without the first, L. */
    private static DMatrixRMaj productWithShifted(DMatrixRMaj space) {
        int rows = space.numRows;
        int columns = space.numCols;
        DMatrixRMaj product = new DMatrixRMaj(columns, columns);
        CommonOps_DDRM.multTransA(
                CommonOps_DDRM.extract(space, 0, rows - 1, 0, columns),
                CommonOps_DDRM.extract(space, 1, rows, 0, columns),
                product);
        return product;
    }

    /** The largest number of poles that can be asked for. */
    int mostPoles() {
        return Math.min(MOST_POLES, height / 2 - 1);
    }

    /**
     * Poles of a given order.
     *
     * @param count how many decaying sines to assume, at most {@link #mostPoles}
     * @return those found, fewer where the equations gave no decaying oscillation
     */
    List<Pole> poles(int count) {
        DMatrixRMaj rotation = rotation(2 * count);
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(2 * count, false);
        List<Pole> poles = new ArrayList<>();
        if (!eigen.decompose(rotation)) {
            return poles;
        }
        for (int i = 0; i < eigen.getNumberOfEigenvalues(); i++) {
            Complex_F64 z = eigen.getEigenvalue(i);
            double sigma = -Math.log(z.getMagnitude()) * rateHz;
            if (z.getImaginary() > 0 && sigma > 0) {
                double hz = Math.atan2(z.getImaginary(), z.getReal()) * rateHz / (2 * Math.PI) + shiftHz;
                poles.add(new Pole(2 * Math.PI * hz, sigma));
            }
        }
        return poles;
    }

    /**
     * The matrix Φ that comes nearest to U·Φ = L, by least squares: (UᵀU)⁻¹·UᵀL.
     *
     * <p>The space's columns are orthonormal, so without their last row v they leave UᵀU = I − v·vᵀ, whose inverse is
     * I + v·vᵀ/(1 − vᵀv): what all orders need is worked out once, and none solves a system of its own.
     */
    private DMatrixRMaj rotation(int size) {
        DMatrixRMaj rotation = CommonOps_DDRM.extract(shifted, 0, size, 0, size);
        double left = 1;
        for (int i = 0; i < size; i++) {
            left -= lastRow[i] * lastRow[i];
        }
        for (int c = 0; c < size; c++) {
            double along = 0;
            for (int i = 0; i < size; i++) {
                along += lastRow[i] * shifted.get(i, c);
            }
            for (int i = 0; i < size; i++) {
                rotation.add(i, c, lastRow[i] * along / Math.max(SMALLEST, left));
            }
        }
        return rotation;
    }
}
