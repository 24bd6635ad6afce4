package io.github.tapwright.climate;

/**
 * By how much a resonance moves for each point of dampness.
 *
 * <p>Learnt: ln f = a + k·x + d·t by least squares over the instrument's own history, time t beside dampness x, so that a steady drift
 * is not learnt as humidity: k = Σxᵣyᵣ/Σxᵣ² of what the lines over time leave of x and of y = ln f, u_k = s/√Σxᵣ², n − 3 degrees of freedom
 * [SeberLee2003]. The slope is taken as it comes: nothing pulls it towards what is assumed. With fewer than four sittings, or a range below
 * 5 points of humidity (0.8 % of moisture; common practice, no source), what {@link HumidityScale} assumes is used and the basis says
 * so; it is as well where so much is not left beside time, because humidity and a drift then look alike. What changed otherwise than
 * steadily a learnt slope still takes along: two summers and two winters are better than one of each.
 *
 * @param scale by what dampness is counted
 * @param percentPerPoint 100·k, in % of the frequency per point of the scale
 * @param standardUncertainty of that, same unit
 * @param degreesOfFreedom behind u
 * @param basis learnt or assumed, and why
 * @param sittings how many the history has
 */
public record HumiditySensitivity(
        HumidityScale scale,
        double percentPerPoint,
        double standardUncertainty,
        double degreesOfFreedom,
        SensitivityBasis basis,
        int sittings) {

    private static final int FEWEST = 4;

    /**
     * What an instrument's history tells.
     *
     * @param history one resonance in different weather
     * @return the sensitivity
     */
    public static HumiditySensitivity of(HumidityHistory history) {
        int sittings = history.points().size();
        if (sittings < FEWEST) {
            return assumed(history, SensitivityBasis.ASSUMED_TOO_FEW_SITTINGS);
        }
        if (history.range() < history.scale().rangeNeeded) {
            return assumed(history, SensitivityBasis.ASSUMED_TOO_LITTLE_RANGE);
        }
        if (history.rangeBesideTime() < history.scale().rangeNeeded) {
            return assumed(history, SensitivityBasis.ASSUMED_RAN_WITH_TIME);
        }
        return learnt(history);
    }

    private static HumiditySensitivity assumed(HumidityHistory history, SensitivityBasis basis) {
        return new HumiditySensitivity(
                history.scale(),
                history.scale().assumedPercentPerPoint,
                history.scale().assumedUncertainty,
                Double.POSITIVE_INFINITY,
                basis,
                history.points().size());
    }

    private static HumiditySensitivity learnt(HumidityHistory history) {
        double[] x = history.dampnessBesideTime();
        double[] y = history.logarithmsBesideTime();
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xx += x[i] * x[i];
            xy += x[i] * y[i];
        }
        double slope = xy / xx;
        double left = 0;
        for (int i = 0; i < x.length; i++) {
            left += (y[i] - slope * x[i]) * (y[i] - slope * x[i]);
        }
        double freedom = x.length - 3.0;
        return new HumiditySensitivity(
                history.scale(),
                100 * slope,
                100 * Math.sqrt(left / freedom / xx),
                freedom,
                SensitivityBasis.LEARNT,
                x.length);
    }

    /**
     * The sensitivity of a resonance in which what this one is of takes part by a share only: k·share, u² by [GUM] 5.1.2 with the term of
     * second order, as share and k may both be far off.
     *
     * @param share above 0, at most 1
     * @param shareUncertainty its standard uncertainty, not negative
     * @return the smaller sensitivity, on the same basis
     */
    public HumiditySensitivity inShare(double share, double shareUncertainty) {
        if (!(share > 0 && share <= 1) || !(shareUncertainty >= 0 && shareUncertainty <= 1)) {
            throw new IllegalArgumentException("a share lies between 0 and 1, got " + share + " ± " + shareUncertainty);
        }
        double u = Math.hypot(
                share * standardUncertainty,
                Math.hypot(percentPerPoint * shareUncertainty, standardUncertainty * shareUncertainty));
        return new HumiditySensitivity(scale, share * percentPerPoint, u, degreesOfFreedom, basis, sittings);
    }

    /**
     * The same with one more thing it may be wrong by, which makes it no better known.
     *
     * @param percentPerPoint a standard uncertainty of either sign, in % per point of the scale
     * @return with the greater u and the same degrees of freedom
     */
    public HumiditySensitivity lessSureBy(double percentPerPoint) {
        return new HumiditySensitivity(
                scale,
                this.percentPerPoint,
                Math.hypot(standardUncertainty, percentPerPoint),
                degreesOfFreedom,
                basis,
                sittings);
    }

    /**
     * The frequency as it would have been at another dampness: f·exp(k·(x_ref − x)), with
     * u²/f² = (u_f/f)² + (k·u_x)² + ((x_ref − x)·u_k)².
     *
     * @param measured the resonance
     * @param dampness at which it was measured, in this scale
     * @param dampnessUncertainty its standard uncertainty, not negative
     * @param reference the dampness to compare at, in this scale
     * @return the corrected frequency
     */
    public CorrectedFrequency corrected(
            MeasuredFrequency measured, double dampness, double dampnessUncertainty, double reference) {
        if (!(dampnessUncertainty >= 0) || !Double.isFinite(dampness + dampnessUncertainty + reference)) {
            throw new IllegalArgumentException("dampness must be finite and its uncertainty not negative, got "
                    + dampness + " ± " + dampnessUncertainty + " and " + reference);
        }
        double distance = reference - dampness;
        double factor = Math.exp(percentPerPoint / 100 * distance);
        double fromSlope = distance * standardUncertainty / 100;
        double relative = Math.hypot(
                fromSlope, Math.hypot(measured.relativeUncertainty(), percentPerPoint / 100 * dampnessUncertainty));
        double share = relative > 0 ? fromSlope / relative : 0;
        double frequencyHz = measured.frequencyHz() * factor;
        return new CorrectedFrequency(
                frequencyHz,
                frequencyHz * relative,
                share == 0 ? Double.POSITIVE_INFINITY : degreesOfFreedom / Math.pow(share, 4),
                100 * (factor - 1));
    }
}
