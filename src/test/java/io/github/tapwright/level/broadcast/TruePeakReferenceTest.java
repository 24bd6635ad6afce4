package io.github.tapwright.level.broadcast;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.level.Sound;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Peaks between samples against [EBU3341] cases 15 to 23; tolerance +0.2 −0.4 dB by the same source. */
class TruePeakReferenceTest {

    private static final double RATE_HZ = 48_000;
    private static final int FINE = 4;

    /** A slow rise and fall around the tone, so that its edges make no peaks of their own. */
    @ParameterizedTest
    @CsvSource({"4, 0.5, 0, -6", "4, 0.5, 45, -6", "6, 0.5, 60, -6", "8, 0.5, 67.5, -6", "4, 1.41, 45, 3"})
    void tones(int samplesAPeriod, double amplitude, double phaseDegrees, double peakDb) {
        double[] tone = Sound.of(
                RATE_HZ,
                0.5,
                t -> amplitude
                        * Math.min(1, Math.min(t, 0.5 - t) / 0.1)
                        * Math.sin(2 * Math.PI * t * RATE_HZ / samplesAPeriod + Math.toRadians(phaseDegrees)));
        double found =
                Programme.measured(RATE_HZ, List.of(1.0), tone).truePeakDb().orElseThrow();
        System.out.printf("true peak of rate/%d at %.1f degrees: %.2f dB%n", samplesAPeriod, phaseDegrees, found);
        assertThat(found - peakDb).isBetween(-0.4, 0.2);
    }

    /**
     * Cases 20 to 23: one period of rate/4 with amplitude 1 inside a tone of rate/6 with amplitude 0.5, made at four
     * times the rate, low-passed, and every fourth sample taken from the offset on: 0.0 dBTP wherever the samples
     * fall. As quoted by [Phonometry]. Not told there: the low pass and the fades, so these are ours.
     */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void onePeriodAnywhereBetweenTheSamples(int offset) {
        double[] kept = everyFourth(lowPassed(onePeriodInsideALowerTone()), offset);
        double found =
                Programme.measured(RATE_HZ, List.of(1.0), kept).truePeakDb().orElseThrow();
        double largestSample =
                20 * Math.log10(Arrays.stream(kept).map(Math::abs).max().orElseThrow());
        System.out.printf("one period, offset %d: %.2f dB, largest sample %.2f dB%n", offset, found, largestSample);
        assertThat(found).isBetween(-0.4, 0.2);
    }

    /** At four times the rate; the phase runs on through the middle, where the short period begins at a zero. */
    private static double[] onePeriodInsideALowerTone() {
        int length = 24 * FINE * 500;
        int start = length / 2;
        int end = start + 4 * FINE;
        double[] fine = new double[length];
        double cycles = 0;
        for (int n = 0; n < length; n++) {
            boolean inside = n >= start && n < end;
            double fade = Math.min(1, Math.min(n, length - 1 - n) / (0.02 * RATE_HZ * FINE));
            fine[n] = fade * (inside ? 1 : 0.5) * Math.sin(2 * Math.PI * cycles);
            cycles += 1.0 / ((inside ? 4 : 6) * FINE);
        }
        return fine;
    }

    /** A Hann-windowed sinc, 6 dB down at 0.45 of the final rate. */
    private static double[] lowPassed(double[] fine) {
        int reach = 128 * FINE;
        double cut = 0.45 / FINE;
        double[] out = new double[fine.length];
        for (int k = -reach; k <= reach; k++) {
            double sinc = k == 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * k) / (Math.PI * k);
            double weight = sinc * (0.5 + 0.5 * Math.cos(Math.PI * k / reach));
            for (int n = Math.max(0, -k); n < Math.min(out.length, out.length - k); n++) {
                out[n] += weight * fine[n + k];
            }
        }
        return out;
    }

    private static double[] everyFourth(double[] fine, int offset) {
        double[] kept = new double[(fine.length - offset + FINE - 1) / FINE];
        Arrays.setAll(kept, n -> fine[FINE * n + offset]);
        return kept;
    }
}
