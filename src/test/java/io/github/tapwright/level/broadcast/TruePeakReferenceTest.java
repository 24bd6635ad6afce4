package io.github.tapwright.level.broadcast;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.level.Sound;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Peaks between samples against [EBU3341] cases 15 to 19; tolerance +0.2 −0.4 dB by the same source. */
class TruePeakReferenceTest {

    private static final double RATE_HZ = 48_000;

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
}
