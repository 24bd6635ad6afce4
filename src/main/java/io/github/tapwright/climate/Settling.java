package io.github.tapwright.climate;

/**
 * Whether an instrument has had time to suit a new climate.
 *
 * <p>The wood comes nearer by e^(−t/τ). τ for a top lacquered on one side is hours to days; the usual 24 hours and the tolerance of
 * 2 points of humidity are common practice, no source. Set τ from your own instrument: tap it every few hours after a change.
 *
 * @param timeConstantHours τ, positive
 * @param tolerancePercentHumidity how many points of humidity the wood may still lag behind, positive
 */
public record Settling(double timeConstantHours, double tolerancePercentHumidity) {

    /** 24 hours, 2 points of humidity. */
    public static final Settling USUAL = new Settling(24, 2);

    /** Refuses what is no time or tolerance. */
    public Settling {
        if (!(timeConstantHours > 0 && timeConstantHours < Double.POSITIVE_INFINITY)
                || !(tolerancePercentHumidity > 0 && tolerancePercentHumidity < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("time constant and tolerance must be above zero, got "
                    + timeConstantHours + " h and " + tolerancePercentHumidity + " %");
        }
    }

    /**
     * How far an instrument has come.
     *
     * @param lagPercentHumidity points of humidity the wood still lags behind
     * @param remainingShare the same as a share of the change, 0 to 1
     * @param settled whether the lag is within the tolerance
     * @param hoursStillNeeded until it is; 0 if settled
     */
    public record Verdict(double lagPercentHumidity, double remainingShare, boolean settled, double hoursStillNeeded) {}

    /**
     * Judges.
     *
     * @param changePercentHumidity by how many points of relative humidity the room, or the case and the room, differ
     * @param hours since the instrument came into the new climate, not negative
     * @return the verdict
     */
    public Verdict judge(double changePercentHumidity, double hours) {
        if (!(Math.abs(changePercentHumidity) <= 100) || !(hours >= 0)) {
            throw new IllegalArgumentException("a change of up to 100 points and the hours since then are needed, got "
                    + changePercentHumidity + " and " + hours);
        }
        double remaining = Math.exp(-hours / timeConstantHours);
        double lag = Math.abs(changePercentHumidity) * remaining;
        boolean settled = lag <= tolerancePercentHumidity;
        double needed = settled ? 0 : timeConstantHours * Math.log(lag / tolerancePercentHumidity);
        return new Verdict(lag, remaining, settled, needed);
    }
}
