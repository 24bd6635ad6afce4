package io.github.tapwright.tap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.Chance;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Mains hum is told from a string whose partials happen to lie on its multiples. */
class MainsHumTest {

    private static Hum hum(DoubleUnaryOperator tone) {
        return hum(6, tone);
    }

    private static Hum hum(int seconds, DoubleUnaryOperator tone) {
        RandomGenerator chance = Chance.seeded(12);
        double[] x = new double[seconds * 44_100];
        for (int n = 0; n < x.length; n++) {
            x[n] = tone.applyAsDouble(n / 44_100.0) + 1e-3 * chance.nextGaussian();
        }
        TapTrack track = TapTrack.read(Recording.of(new SampleRate(44_100), x).stream(), TapSettings.STANDARD);
        return MainsHum.find(track, List.of(), 1000);
    }

    private static double tones(double fundamentalHz, double t, int... multiples) {
        double sum = 0;
        for (int k : multiples) {
            sum += 0.01 * Math.sin(2 * Math.PI * k * fundamentalHz * t + k);
        }
        return sum;
    }

    @Test
    void findsTheFundamentalThoughItIsNotHeardItself() {
        Hum hum = hum(t -> tones(60.04, t, 3, 5, 9));
        assertThat(hum.multiples()).containsExactly(3, 5, 9);
        assertThat(hum.fundamentalHz()).isCloseTo(60.04, within(0.01));
    }

    @Test
    void tellsFiftyFromSixty() {
        Hum hum = hum(t -> tones(49.97, t, 1, 2, 3, 7));
        assertThat(hum.multiples()).containsExactly(1, 2, 3, 7);
        assertThat(hum.fundamentalHz()).isCloseTo(49.97, within(0.01));
    }

    /** In a minute the twentieth multiple is a line of 0.02 Hz: the fundamental must be known to a thousandth of a hertz. */
    @ParameterizedTest
    @ValueSource(doubles = {50.02, 50.0225, 49.9775, 60.0137})
    void everyMultipleOfALongRecordingIsFound(double mainsHz) {
        int[] multiples = IntStream.rangeClosed(1, (int) (1000 / mainsHz)).toArray();
        Hum hum = hum(60, t -> tones(mainsHz, t, multiples));
        assertThat(hum.fundamentalHz()).isCloseTo(mainsHz, within(0.0005));
        assertThat(hum.multiples()).isEqualTo(Arrays.stream(multiples).boxed().toList());
    }

    @Test
    void aStringThatDiesAwayIsNoHum() {
        assertThat(hum(t -> Math.exp(-t) * tones(100.1, t, 1, 2, 3, 4, 5)).isHeard())
                .isFalse();
    }

    @Test
    void noiseIsNoHum() {
        assertThat(hum(t -> 0).isHeard()).isFalse();
    }

    @Test
    void recordingsOfOneSetShareOneHum() {
        Hum shared = Hum.shared(List.of(
                new Hum(50.02, List.of(1, 3)), Hum.NONE, new Hum(49.98, List.of(3, 5)), new Hum(60, List.of(1, 2))));
        assertThat(shared.fundamentalHz()).isCloseTo(50, within(1e-9));
        assertThat(shared.multiples()).containsExactly(1, 3, 5);
        assertThat(shared.tonesHz()).hasSize(3);
    }
}
