package io.github.tapwright.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.SampleRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sound levels against [IEC61672-1]: tonebursts of tables 4 and 5 at three rates, decay, definitions.
 *
 * <p>Tolerance of the bursts: the closed forms 10 lg(1 − exp(−T/τ)) and 10 lg(T / 1 s) are met within 0.1 dB
 * except the shortest, whose A-weighted energy spreads around 4 kHz; there class 1 is the limit.
 */
class SoundLevelMeterReferenceTest {

    private static final double RATE_HZ = 48_000;
    private static final double PEAK_DB = -20;

    private static SoundLevels levels(double[] samples) {
        return levels(RATE_HZ, samples);
    }

    private static SoundLevels levels(double rateHz, double[] samples) {
        SoundLevelMeter meter = new SoundLevelMeter(new SampleRate(rateHz));
        meter.take(samples, samples.length);
        return meter.levels(new FullScale()).orElseThrow();
    }

    private static double[] burst(double rateHz, double frequencyHz, double seconds) {
        return Sound.joined(
                new double[4800], Sound.sine(rateHz, seconds, frequencyHz, PEAK_DB), new double[2 * (int) rateHz]);
    }

    private static final SoundLevels STEADY = levels(Sound.sine(RATE_HZ, 20, 4000, PEAK_DB));

    @ParameterizedTest
    @CsvSource({
        "1000, 0.0, 0.0, 0.5, 0.5",
        "500, -0.1, -3.0, 0.5, 0.5",
        "200, -1.0, -7.0, 0.5, 0.5",
        "100, -2.6, -10.0, 1.0, 1.0",
        "50, -4.8, -13.0, 1.0, 1.0",
        "20, -8.3, -17.0, 1.0, 1.0",
        "10, -11.1, -20.0, 1.0, 1.0",
        "5, -14.1, -23.0, 1.0, 1.0",
        "2, -18.0, -27.0, 1.0, 1.5",
        "1, -21.0, -30.0, 1.0, 2.0",
        "0.5, -24.0, -33.0, 1.0, 2.5",
        "0.25, -27.0, -36.0, 1.0, 3.0"
    })
    void tonebursts(double milliseconds, double fastDb, double exposureDb, double above, double below) {
        for (double rateHz : new double[] {44_100, 48_000, 96_000}) {
            double steadyDb =
                    levels(rateHz, Sound.sine(rateHz, 5, 4000, PEAK_DB)).laeq().levelDb();
            SoundLevels burst = levels(rateHz, burst(rateHz, 4000, milliseconds / 1000));
            double fast = burst.lafMax().levelDb() - steadyDb;
            double exposure = burst.lae().levelDb() - steadyDb;
            System.out.printf(
                    "burst %.2f ms at %.0f Hz: LAFmax %.2f dB, LAE %.2f dB%n", milliseconds, rateHz, fast, exposure);
            assertBurst(milliseconds / 1000, fast, exposure);
            assertThat(fast - fastDb).isBetween(-below, above);
            assertThat(exposure - exposureDb).isBetween(-below, above);
        }
    }

    /** Much closer than class 1 asks, down to 2 ms. */
    private static void assertBurst(double seconds, double fast, double exposure) {
        if (seconds >= 0.002) {
            assertThat(fast).isCloseTo(10 * Math.log10(-Math.expm1(-seconds / 0.125)), within(0.1));
            assertThat(exposure).isCloseTo(10 * Math.log10(seconds), within(0.1));
        }
    }

    /** Tolerance: the closed form is exact but for the rounding of the table and the ripple of the square. */
    @ParameterizedTest
    @CsvSource({
        "1000, -2.0",
        "500, -4.05",
        "200, -7.4",
        "100, -10.2",
        "50, -13.1",
        "20, -17.0",
        "10, -20.0",
        "5, -23.0",
        "2, -27.0"
    })
    void slowTonebursts(double milliseconds, double slowDb) {
        SoundLevels burst = levels(burst(RATE_HZ, 4000, milliseconds / 1000));
        assertThat(burst.lasMax().levelDb() - STEADY.laeq().levelDb()).isCloseTo(slowDb, within(0.15));
    }

    /** Table 5: one cycle, and half cycles of either sign. */
    @ParameterizedTest
    @CsvSource({
        "31.5, 1, 2.5, 2.0, 1",
        "500, 1, 3.5, 1.0, 1",
        "8000, 1, 3.4, 2.0, 1",
        "500, 0.5, 2.4, 1.0, 1",
        "500, 0.5, 2.4, 1.0, -1"
    })
    void peaks(double frequencyHz, double cycles, double peakDb, double limitDb, int sign) {
        double steadyDb =
                levels(Sound.sine(RATE_HZ, 20, frequencyHz, PEAK_DB)).lceq().levelDb();
        double[] burst = burst(RATE_HZ, frequencyHz, cycles / frequencyHz);
        for (int n = 0; n < burst.length; n++) {
            burst[n] *= sign;
        }
        double found = levels(burst).lcPeak().levelDb() - steadyDb;
        System.out.printf("LCpeak - LC of %.1f cycle at %.1f Hz: %.2f dB%n", cycles, frequencyHz, found);
        assertThat(found).isCloseTo(peakDb, within(limitDb));
    }

    /** Decay after a steady tone: 34.7 dB/s +3.8 −3.7 (F) and 4.3 dB/s +0.8 −0.7 (S); exactly 10 lg(e)/τ. */
    @ParameterizedTest
    @EnumSource
    void decay(TimeWeighting weighting) {
        TimeWeightedMaximum detector = new TimeWeightedMaximum(weighting, new SampleRate(RATE_HZ));
        TimeWeightedMaximum beside = new TimeWeightedMaximum(TimeWeighting.FAST, new SampleRate(RATE_HZ));
        double[] tone = Sound.sine(RATE_HZ, 10, 4000, PEAK_DB);
        TimeWeightedMaximum.takeBoth(detector, beside, tone, tone.length);
        double before = detector.meanSquare();
        TimeWeightedMaximum.takeBoth(detector, beside, new double[48_000], 48_000);
        // what is left is seen by lifting it above the maximum: one sample adds its share of its square
        double share = -Math.expm1(-1 / (weighting.timeConstantSeconds() * RATE_HZ));
        double lift = 2 * before;
        TimeWeightedMaximum.takeBoth(detector, beside, new double[] {Math.sqrt(lift / share)}, 1);
        double left = (detector.meanSquare() - lift) / (1 - share);
        double rate = 10 * Math.log10(before / left);
        assertThat(rate).isCloseTo(10 * Math.log10(Math.E) / weighting.timeConstantSeconds(), within(0.01));
    }

    /** F, S and the equivalent level of a steady 1 kHz tone agree within 0.1 dB; A, C and Z within 0.2 dB. */
    @Test
    void aSteadyTone() {
        SoundLevels levels = levels(Sound.sine(RATE_HZ, 30, 1000, PEAK_DB));
        double wanted = PEAK_DB - 10 * Math.log10(2);
        assertThat(levels.laeq().levelDb()).isCloseTo(wanted, within(0.01));
        assertThat(levels.lceq().levelDb()).isCloseTo(wanted, within(0.01));
        assertThat(levels.lzeq().levelDb()).isCloseTo(wanted, within(0.01));
        assertThat(levels.lafMax().levelDb()).isCloseTo(wanted, within(0.02));
        assertThat(levels.lasMax().levelDb()).isCloseTo(wanted, within(0.01));
        assertThat(levels.lae().levelDb()).isCloseTo(wanted + 10 * Math.log10(30), within(0.01));
        assertThat(levels.durationSeconds()).isEqualTo(30);
    }

    /** Level linearity within 0.8 dB, here exact: it is a computation. */
    @ParameterizedTest
    @ValueSource(doubles = {0, -40, -100})
    void linearity(double peakDb) {
        double laeq = levels(Sound.sine(RATE_HZ, 5, 1000, peakDb)).laeq().levelDb();
        assertThat(laeq).isCloseTo(peakDb - 10 * Math.log10(2), within(0.01));
    }
}
