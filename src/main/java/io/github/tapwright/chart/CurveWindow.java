package io.github.tapwright.chart;

/**
 * The part of the response curves a reader looks at.
 *
 * @param lowHz left edge, greater than 0
 * @param highHz right edge, greater than the left one
 * @param lowDb lower edge
 * @param highDb upper edge, greater than the lower one
 */
public record CurveWindow(double lowHz, double highHz, double lowDb, double highDb) {

    /** Closer than a semitone by ten there is nothing more to see. */
    private static final double LEAST_RATIO = Math.pow(2, 1.0 / 120);

    private static final double LEAST_DB = 2;
    private static final double MOST_DB = 200;
    private static final double LOWEST_HZ = 5;
    private static final double HIGHEST_HZ = 24_000;

    /** Refuses a window without width or height. */
    public CurveWindow {
        if (!(lowHz > 0 && highHz > lowHz && highDb > lowDb)) {
            throw new IllegalArgumentException(
                    "no window: " + lowHz + " to " + highHz + " Hz, " + lowDb + " to " + highDb + " dB");
        }
    }

    /**
     * Slides the window; it stays within what can be heard.
     *
     * @param shareRight how far to the right, in widths of the window
     * @param shareUp how far up, in heights of the window
     * @return the window there, of the same size
     */
    public CurveWindow slid(double shareRight, double shareUp) {
        double ratio = Math.pow(highHz / lowHz, shareRight);
        double within = Math.max(LOWEST_HZ / lowHz, Math.min(HIGHEST_HZ / highHz, ratio));
        double up = shareUp * (highDb - lowDb);
        return new CurveWindow(lowHz * within, highHz * within, lowDb + up, highDb + up);
    }

    /**
     * Comes closer in frequency, or steps back.
     *
     * @param factor above 1 comes closer
     * @param aroundHz what stays in its place
     * @return the window after that
     */
    public CurveWindow closer(double factor, double aroundHz) {
        double low = Math.max(LOWEST_HZ, aroundHz * Math.pow(lowHz / aroundHz, 1 / factor));
        double high = Math.min(HIGHEST_HZ, aroundHz * Math.pow(highHz / aroundHz, 1 / factor));
        return high / low < LEAST_RATIO ? this : new CurveWindow(low, high, lowDb, highDb);
    }

    /**
     * Comes closer in level, or steps back.
     *
     * @param factor above 1 comes closer
     * @param aroundDb what stays in its place
     * @return the window after that
     */
    public CurveWindow taller(double factor, double aroundDb) {
        double low = aroundDb + (lowDb - aroundDb) / factor;
        double high = aroundDb + (highDb - aroundDb) / factor;
        return high - low < LEAST_DB || high - low > MOST_DB ? this : new CurveWindow(lowHz, highHz, low, high);
    }

    /** Share of the width at which a frequency lies, 0 at the left edge. */
    double shareOf(double frequencyHz) {
        return Math.log(frequencyHz / lowHz) / Math.log(highHz / lowHz);
    }
}
