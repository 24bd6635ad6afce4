package io.github.tapwright.mode.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Poles as eigenvalues of the state (displacements, velocities).
 *
 * <p>d/dt (x, v) = (v, −M⁻¹(K + μaaᵀ)x − M⁻¹Rv). Displacements are scaled by sqrt(m) so that a top of 80 g and
 * an air plug of half a gram weigh alike in the arithmetic, and time by 1/1000 s.
 */
final class PoleSearch {

    private static final double TIME_SCALE = 1000;

    private final List<Piston> pistons;
    private final double airStiffness;

    PoleSearch(List<Piston> pistons, double airStiffness) {
        this.pistons = pistons;
        this.airStiffness = airStiffness;
    }

    List<Pole> poles() {
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(2 * pistons.size(), false);
        if (!eigen.decompose(stateMatrix())) {
            throw new ArithmeticException("the body's eigenvalues did not converge");
        }
        List<Pole> poles = new ArrayList<>();
        for (int i = 0; i < eigen.getNumberOfEigenvalues(); i++) {
            Complex_F64 s = eigen.getEigenvalue(i);
            if (s.imaginary > 0) {
                poles.add(new Pole(Math.max(0, -s.real * TIME_SCALE), s.imaginary * TIME_SCALE / (2 * Math.PI)));
            }
        }
        poles.sort(Comparator.comparingDouble(Pole::frequencyHz));
        return List.copyOf(poles);
    }

    private DMatrixRMaj stateMatrix() {
        int n = pistons.size();
        DMatrixRMaj a = new DMatrixRMaj(2 * n, 2 * n);
        for (int i = 0; i < n; i++) {
            Piston own = pistons.get(i);
            a.set(i, n + i, 1);
            a.set(n + i, n + i, -own.resistance() / own.mass() / TIME_SCALE);
            for (int j = 0; j < n; j++) {
                Piston other = pistons.get(j);
                double coupling = airStiffness * own.area() * other.area() / Math.sqrt(own.mass() * other.mass());
                double alone = i == j ? own.stiffness() / own.mass() : 0;
                a.set(n + i, j, -(alone + coupling) / (TIME_SCALE * TIME_SCALE));
            }
        }
        return a;
    }
}
