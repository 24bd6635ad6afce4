package io.github.tapwright.signal;

/**
 * A low-pass impulse response: a sinc under Kaiser's window.
 *
 * <p>h(t) = 2·f_c·sinc(2·f_c·t)·w(t/T), |t| ≤ T, with w the window of shape β = 0.1102·(A − 8.7) and
 * T = (A − 8) / (4.57·2π·Δf) for a stop band A dB down and a transition Δf Hz wide around f_c. Its integral
 * is 1 up to the ripple. Source: [OppenheimSchafer2010], sec. 7.5.3.
 */
final class KaiserSinc {

    private final double cutHz;
    private final double reachSeconds;
    private final double shape;

    /** A response flat up to {@code passEdgeHz} and {@code stopBandDb} (over 50) down from {@code stopEdgeHz}. */
    KaiserSinc(double passEdgeHz, double stopEdgeHz, double stopBandDb) {
        this.cutHz = (passEdgeHz + stopEdgeHz) / 2;
        this.reachSeconds = (stopBandDb - 8) / (4.57 * 2 * Math.PI * (stopEdgeHz - passEdgeHz));
        this.shape = 0.1102 * (stopBandDb - 8.7);
    }

    /** Half the length of the response, s. */
    double reachSeconds() {
        return reachSeconds;
    }

    /** The response at a time counted from its middle, 1/s. */
    double at(double seconds) {
        double r = seconds / reachSeconds;
        if (Math.abs(r) >= 1) {
            return 0;
        }
        double x = 2 * Math.PI * cutHz * seconds;
        double sinc = x == 0 ? 1 : Math.sin(x) / x;
        return 2 * cutHz * sinc * bessel0(shape * Math.sqrt(1 - r * r)) / bessel0(shape);
    }

    /** Modified Bessel function of the first kind, order 0, by its power series. */
    static double bessel0(double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; term > 1e-17 * sum; k++) {
            term *= x * x / (4.0 * k * k);
            sum += term;
        }
        return sum;
    }
}
