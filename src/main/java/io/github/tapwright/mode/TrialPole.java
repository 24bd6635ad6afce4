package io.github.tapwright.mode;

import io.github.tapwright.signal.OrthonormalBasis;
import io.github.tapwright.signal.ScalarProduct;

/** A pole that may be missing from a fit, with its columns in one window, which do not depend on the fit. */
final class TrialPole {

    /** Of a trial pole's columns so little lies outside a fit's own that rounding has eaten it. */
    private static final double NOTHING_NEW = 1e-9;

    private final Pole pole;
    private final double[] cosine;
    private final double[] sine;
    private final double aa;
    private final double ab;
    private final double bb;

    TrialPole(SpectralWindow window, Pole pole) {
        this.pole = pole;
        double[][] columns = window.columns(pole);
        cosine = columns[0];
        sine = columns[1];
        aa = ScalarProduct.of(cosine, cosine);
        ab = ScalarProduct.of(cosine, sine);
        bb = ScalarProduct.of(sine, sine);
    }

    Pole pole() {
        return pole;
    }

    /**
     * By how much a fit's cost would fall with this pole too, its own poles staying where they are.
     *
     * @param basis what the fit spans
     * @param residual what it leaves over, strike by strike; nothing of that lies within the basis
     */
    double drop(OrthonormalBasis basis, double[][] residual) {
        double[] cosineWithin = basis.shares(cosine);
        double[] sineWithin = basis.shares(sine);
        double cc = aa - ScalarProduct.of(cosineWithin, cosineWithin);
        double cs = ab - ScalarProduct.of(cosineWithin, sineWithin);
        double ss = bb - ScalarProduct.of(sineWithin, sineWithin);
        double determinant = cc * ss - cs * cs;
        if (determinant <= NOTHING_NEW * aa * bb) {
            return 0;
        }
        double[] c = new double[residual.length];
        double[] s = new double[residual.length];
        ScalarProduct.ofEach(cosine, residual, residual.length, c);
        ScalarProduct.ofEach(sine, residual, residual.length, s);
        double drop = 0;
        for (int strike = 0; strike < residual.length; strike++) {
            drop += (c[strike] * c[strike] * ss - 2 * c[strike] * s[strike] * cs + s[strike] * s[strike] * cc)
                    / determinant;
        }
        return drop;
    }
}
