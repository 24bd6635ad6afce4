package io.github.tapwright.level.loudness;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Contours of equal loudness for pure tones in a free field.
 *
 * <p>L(f, LN) = (10/α)·lg((4·10⁻¹⁰)^(0.3−α)·(10^(0.03·LN) − 10^0.072) + 10^(α·(T+U)/10)) − U with α, U and the
 * threshold T of the frequency. Defined at 29 third-octave frequencies from 20 Hz to 12.5 kHz, for 20 to 90 phon
 * up to 4 kHz and 20 to 80 phon from 5 kHz. Source: [ISO226], formula 1 and table 1, as transcribed by [REFMAP].
 */
public final class EqualLoudness {

    /** Frequency in Hz, α, U in dB, T in dB SPL. */
    private static final double[][] TABLE = {
        {20, 0.635, -31.5, 78.1},
        {25, 0.602, -27.2, 68.7},
        {31.5, 0.569, -23.1, 59.5},
        {40, 0.537, -19.3, 51.1},
        {50, 0.509, -16.1, 44.0},
        {63, 0.482, -13.1, 37.5},
        {80, 0.456, -10.4, 31.5},
        {100, 0.433, -8.2, 26.5},
        {125, 0.412, -6.3, 22.1},
        {160, 0.391, -4.6, 17.9},
        {200, 0.373, -3.2, 14.4},
        {250, 0.357, -2.1, 11.4},
        {315, 0.343, -1.2, 8.6},
        {400, 0.330, -0.5, 6.2},
        {500, 0.320, 0, 4.4},
        {630, 0.311, 0.4, 3.0},
        {800, 0.303, 0.5, 2.2},
        {1000, 0.300, 0, 2.4},
        {1250, 0.295, -2.7, 3.5},
        {1600, 0.292, -4.2, 1.7},
        {2000, 0.290, -1.2, -1.3},
        {2500, 0.290, 1.4, -4.2},
        {3150, 0.289, 2.3, -6.0},
        {4000, 0.289, 1.0, -5.4},
        {5000, 0.289, -2.3, -1.5},
        {6300, 0.293, -7.2, 6.0},
        {8000, 0.303, -11.2, 12.6},
        {10000, 0.323, -10.9, 13.9},
        {12500, 0.354, -3.5, 12.3}
    };

    private static final double LEAST_PHON = 20;
    private static final double MOST_PHON = 90;
    private static final double MOST_PHON_ABOVE_4_KHZ = 80;
    private static final double REFERENCE_INTENSITY = 4e-10;
    private static final double THRESHOLD_PHON_TERM = Math.pow(10, 0.072);

    private EqualLoudness() {}

    /**
     * The frequencies the contours are defined at.
     *
     * @return Hz, nominal, lowest first
     */
    public static List<Double> frequenciesHz() {
        return Arrays.stream(TABLE).map(row -> row[0]).toList();
    }

    /**
     * The sound pressure level at which a tone is as loud as a 1 kHz tone of {@code phon} dB.
     *
     * @param frequencyHz one of {@link #frequenciesHz()}
     * @param phon loudness level
     * @return dB SPL, or empty outside the range the standard covers
     */
    public static OptionalDouble levelDb(double frequencyHz, double phon) {
        double[] row = row(frequencyHz);
        if (!covers(row, phon)) {
            return OptionalDouble.empty();
        }
        double alpha = row[1];
        double power = scale(alpha) * (Math.pow(10, 0.03 * phon) - THRESHOLD_PHON_TERM)
                + Math.pow(10, alpha * (row[3] + row[2]) / 10);
        return OptionalDouble.of(10 / alpha * Math.log10(power) - row[2]);
    }

    /**
     * The loudness level of a tone: the inverse of {@link #levelDb}.
     *
     * @param frequencyHz one of {@link #frequenciesHz()}
     * @param levelDb dB SPL
     * @return phon, or empty outside the range the standard covers
     */
    public static OptionalDouble phon(double frequencyHz, double levelDb) {
        double[] row = row(frequencyHz);
        double alpha = row[1];
        double difference =
                Math.pow(10, alpha * (levelDb + row[2]) / 10) - Math.pow(10, alpha * (row[3] + row[2]) / 10);
        double phon = 100.0 / 3 * Math.log10(difference / scale(alpha) + THRESHOLD_PHON_TERM);
        return covers(row, phon) ? OptionalDouble.of(phon) : OptionalDouble.empty();
    }

    private static double scale(double alpha) {
        return Math.pow(REFERENCE_INTENSITY, 0.3 - alpha);
    }

    private static boolean covers(double[] row, double phon) {
        return phon >= LEAST_PHON && phon <= (row[0] > 4000 ? MOST_PHON_ABOVE_4_KHZ : MOST_PHON);
    }

    private static double[] row(double frequencyHz) {
        return Arrays.stream(TABLE)
                .filter(row -> row[0] == frequencyHz)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "equal loudness is defined at third-octave frequencies, not at " + frequencyHz + " Hz"));
    }
}
