package io.github.tapwright.level.band;

/**
 * One band.
 *
 * <p>f_m = 1000·G^(x/b) Hz, edges f_m·G^(∓1/(2b)), G = 10^(3/10). Source: [IEC61260-1].
 *
 * @param bandwidth octave (b = 1) or third-octave (b = 3)
 * @param index x, counted from the band of 1 kHz
 */
public record Band(Bandwidth bandwidth, int index) {

    private static final double REFERENCE_HZ = 1000;
    private static final double[] PREFERRED = {1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8};

    /**
     * The exact mid-band frequency.
     *
     * @return Hz
     */
    public double midHz() {
        return REFERENCE_HZ * Math.pow(10, 0.3 * index / bandwidth.bandsPerOctave());
    }

    /**
     * The lower edge.
     *
     * @return Hz
     */
    public double lowerHz() {
        return midHz() / halfBandRatio();
    }

    /**
     * The upper edge.
     *
     * @return Hz
     */
    public double upperHz() {
        return midHz() * halfBandRatio();
    }

    /**
     * The name of the band: its mid-band frequency as it is marked on instruments. Source: [IEC61260-1], annex E.
     *
     * @return Hz, for example 31.5
     */
    public double nominalHz() {
        int tenths = index * 3 / bandwidth.bandsPerOctave(); // a band of ten to the decade, from 1 kHz
        double decade = Math.pow(10, 3 + Math.floorDiv(tenths, 10));
        return Math.rint(PREFERRED[Math.floorMod(tenths, 10)] * decade * 100) / 100;
    }

    private double halfBandRatio() {
        return Math.pow(Bandwidth.OCTAVE_RATIO, 0.5 / bandwidth.bandsPerOctave());
    }
}
