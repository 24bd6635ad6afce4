package io.github.tapwright.level.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.Sound;
import io.github.tapwright.recording.SampleRate;
import org.junit.jupiter.api.Test;

class BandTest {

    /** Exact mid-band frequencies, [IEC61260-1]; tolerance half a unit of the last digit. */
    @Test
    void midFrequenciesAreExactPowersOfTen() {
        double[] exact = {
            19.953, 25.119, 31.623, 39.811, 50.119, 63.096, 79.433, 100, 125.893, 158.489, 199.526, 251.189, 316.228
        };
        var bands = Bandwidth.THIRD_OCTAVE.bandsWithin(96_000);
        for (int k = 0; k < exact.length; k++) {
            assertThat(bands.get(k).midHz()).isCloseTo(exact[k], within(0.00051));
        }
    }

    @Test
    void bandsAreNamedAsOnInstruments() {
        assertThat(Bandwidth.THIRD_OCTAVE.bandsWithin(96_000))
                .extracting(Band::nominalHz)
                .containsExactly(
                        20.0, 25.0, 31.5, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 315.0, 400.0,
                        500.0, 630.0, 800.0, 1000.0, 1250.0, 1600.0, 2000.0, 2500.0, 3150.0, 4000.0, 5000.0, 6300.0,
                        8000.0, 10000.0, 12500.0, 16000.0, 20000.0);
        assertThat(Bandwidth.OCTAVE.bandsWithin(96_000))
                .extracting(Band::nominalHz)
                .containsExactly(31.5, 63.0, 125.0, 250.0, 500.0, 1000.0, 2000.0, 4000.0, 8000.0, 16000.0);
    }

    @Test
    void aBandThatReachesBeyondHalfTheRateIsMissing() {
        assertThat(Bandwidth.THIRD_OCTAVE.bandsWithin(48_000)).hasSize(31);
        assertThat(Bandwidth.THIRD_OCTAVE.bandsWithin(44_100)).hasSize(30);
        assertThat(Bandwidth.OCTAVE.bandsWithin(44_100)).hasSize(9);
    }

    @Test
    void aToneLandsInItsBand() {
        BandMeter meter = new BandMeter(Bandwidth.THIRD_OCTAVE, new SampleRate(48_000));
        assertThat(meter.powers()).isEmpty();
        double[] tone = Sound.sine(48_000, 10, 1000, 0);
        meter.take(tone, tone.length);
        assertThat(meter.powers()).hasSize(31);
        for (BandPower power : meter.powers()) {
            if (power.band().index() == 0) {
                assertThat(10 * Math.log10(power.meanSquare())).isCloseTo(-3.01, within(0.02));
            } else {
                assertThat(10 * Math.log10(power.meanSquare())).isLessThan(-20);
            }
        }
    }

    /** Summation, class 1 of [IEC61260-1]: the bands together hold the power of the sound, +0.8 −1.8 dB. */
    @Test
    void theBandsTogetherHoldThePowerOfATone() {
        for (double frequencyHz : new double[] {100, 112.2, 500, 530, 1122, 4000, 8000}) {
            for (Bandwidth width : Bandwidth.values()) {
                BandMeter meter = new BandMeter(width, new SampleRate(48_000));
                double[] tone = Sound.sine(48_000, 4, frequencyHz, 0);
                meter.take(tone, tone.length);
                double sum = meter.powers().stream()
                        .mapToDouble(BandPower::meanSquare)
                        .sum();
                assertThat(10 * Math.log10(2 * sum)).isBetween(-1.8, 0.8);
            }
        }
    }
}
