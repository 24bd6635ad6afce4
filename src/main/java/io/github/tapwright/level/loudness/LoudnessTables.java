package io.github.tapwright.level.loudness;

/**
 * The tables of the loudness model. Source: [ISO532-1], tables A.3 to A.9, as transcribed by [MoSQITo].
 */
final class LoudnessTables {

    /** Table A.3: upper ends of the level ranges, dB, for the equal-loudness correction of low bands. */
    static final double[] LOW_BAND_RANGE_DB = {45, 55, 65, 71, 80, 90, 100, 120};

    /** Table A.3: correction of the bands of 25 Hz to 250 Hz, dB, one row for each level range. */
    static final double[][] LOW_BAND_CORRECTION_DB = {
        {-32, -24, -16, -10, -5, 0, -7, -3, 0, -2, 0},
        {-29, -22, -15, -10, -4, 0, -7, -2, 0, -2, 0},
        {-27, -19, -14, -9, -4, 0, -6, -2, 0, -2, 0},
        {-25, -17, -12, -9, -3, 0, -5, -2, 0, -2, 0},
        {-23, -16, -11, -7, -3, 0, -4, -1, 0, -1, 0},
        {-20, -14, -10, -6, -3, 0, -4, -1, 0, -1, 0},
        {-18, -12, -9, -6, -2, 0, -3, -1, 0, -1, 0},
        {-15, -10, -8, -4, -2, 0, -3, -1, 0, -1, 0}
    };

    /** Table A.4: transmission of the ear, dB, for the 20 approximated critical bands. */
    static final double[] EAR_TRANSMISSION_DB = {
        0, 0, 0, 0, 0, 0, 0, 0, 0, 0, -0.5, -1.6, -3.2, -5.4, -5.6, -4, -1.5, 2, 5, 12
    };

    /** Table A.5: what a diffuse field adds over a free one, dB. */
    static final double[] DIFFUSE_FIELD_DB = {
        0, 0, 0.5, 0.9, 1.2, 1.6, 2.3, 2.8, 3, 2, 0, -1.4, -2, -1.9, -1, 0.5, 3, 4, 4.3, 4
    };

    /** Table A.6: threshold in quiet without the ear's transmission, dB. */
    static final double[] THRESHOLD_DB = {30, 18, 12, 8, 7, 6, 5, 4, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3};

    /** Table A.7: from third-octave to critical-band level, dB. */
    static final double[] BANDWIDTH_CORRECTION_DB = {
        -0.25, -0.6, -0.8, -0.8, -0.5, 0, 0.5, 1.1, 1.5, 1.7, 1.8, 1.8, 1.7, 1.6, 1.4, 1.2, 0.8, 0.5, 0, -0.5
    };

    /** Table A.8: upper ends of the approximated critical bands, Bark; the last only falls. */
    static final double[] BAND_END_BARK = {
        0.9, 1.8, 2.8, 3.5, 4.4, 5.4, 6.6, 7.9, 9.2, 10.6, 12.3, 13.8, 15.2, 16.7, 18.1, 19.3, 20.6, 21.8, 22.7, 23.6,
        24
    };

    /** Table A.9: lower ends of the ranges of specific loudness, sone per Bark. */
    static final double[] SLOPE_RANGE = {
        21.5, 18, 15.1, 11.5, 9, 6.1, 4.4, 3.1, 2.13, 1.36, 0.82, 0.42, 0.3, 0.22, 0.15, 0.1, 0.035, 0
    };

    /** Table A.9: steepness towards higher bands, sone per Bark squared; rows ranges, columns bands 2 to 9. */
    static final double[][] SLOPE = {
        {13, 8.2, 6.3, 5.5, 5.5, 5.5, 5.5, 5.5},
        {9, 7.5, 6, 5.1, 4.5, 4.5, 4.5, 4.5},
        {7.8, 6.7, 5.6, 4.9, 4.4, 3.9, 3.9, 3.9},
        {6.2, 5.4, 4.6, 4, 3.5, 3.2, 3.2, 3.2},
        {4.5, 3.8, 3.6, 3.2, 2.9, 2.7, 2.7, 2.7},
        {3.7, 3, 2.8, 2.35, 2.2, 2.2, 2.2, 2.2},
        {2.9, 2.3, 2.1, 1.9, 1.8, 1.7, 1.7, 1.7},
        {2.4, 1.7, 1.5, 1.35, 1.3, 1.3, 1.3, 1.3},
        {1.95, 1.45, 1.3, 1.15, 1.1, 1.1, 1.1, 1.1},
        {1.5, 1.2, 0.94, 0.86, 0.82, 0.82, 0.82, 0.82},
        {0.72, 0.67, 0.64, 0.63, 0.62, 0.62, 0.62, 0.62},
        {0.59, 0.53, 0.51, 0.5, 0.42, 0.42, 0.42, 0.42},
        {0.4, 0.33, 0.26, 0.24, 0.24, 0.22, 0.22, 0.22},
        {0.27, 0.21, 0.2, 0.18, 0.17, 0.17, 0.17, 0.17},
        {0.16, 0.15, 0.14, 0.12, 0.11, 0.11, 0.11, 0.11},
        {0.12, 0.11, 0.1, 0.08, 0.08, 0.08, 0.08, 0.08},
        {0.09, 0.08, 0.07, 0.06, 0.06, 0.06, 0.06, 0.05},
        {0.06, 0.05, 0.03, 0.02, 0.02, 0.02, 0.02, 0.02}
    };

    private LoudnessTables() {}
}
