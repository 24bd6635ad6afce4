package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.note.Disturbance.Kind;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.util.Arrays;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fades, loops, second plucks and sounds that are no notes. */
class DisturbedNoteTest {

    private static final double RATE_HZ = 44_100;
    private static final StringNote STRING = StringNote.plain(146.8, 5e-5, 4, 3).damped(0.05);

    private static NoteResult analyse(double[]... channels) {
        return NoteAnalysis.analyse(Sound.of(RATE_HZ, channels), NoteSettings.STANDARD);
    }

    @Test
    void anUndisturbedNoteIsNotDisturbed() {
        assertThat(analyse(STRING.samples(RATE_HZ, Chance.seeded(1))).disturbance())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1.0})
    void aFadeIsFoundAndLeftOut(double fadeSeconds) {
        double[] x = STRING.samples(RATE_HZ, Chance.seeded(1));
        int fade = (int) (fadeSeconds * RATE_HZ);
        for (int n = 0; n < fade; n++) {
            x[x.length - 1 - n] *= (double) n / fade;
        }
        NoteResult result = analyse(x);
        Disturbance found = result.disturbance().orElseThrow();
        assertThat(found.kind()).isEqualTo(Kind.FADE);
        assertThat(found.atSeconds()).isCloseTo(3.2 - fadeSeconds, within(0.5 * fadeSeconds));
        PartialDecay.OneStage first =
                (PartialDecay.OneStage) result.partials().get(0).decay();
        assertThat(first.decayTimeSeconds().value()).isCloseTo(4, Percentage.withPercentage(5));
    }

    @Test
    void aLoopIsFoundAndLeftOut() {
        double[] once = STRING.samples(RATE_HZ, Chance.seeded(1));
        int period = (int) (0.3 * RATE_HZ);
        double[] x = Arrays.copyOf(once, once.length + 3 * period);
        for (int n = once.length; n < x.length; n++) {
            x[n] = x[n - period];
        }
        Disturbance found = analyse(x).disturbance().orElseThrow();
        assertThat(found.kind()).isEqualTo(Kind.LOOP);
        assertThat(found.atSeconds()).isCloseTo(3.2, within(0.02));
    }

    @Test
    void aSecondPluckIsFoundAndLeftOut() {
        double[] x = STRING.samples(RATE_HZ, Chance.seeded(1));
        double[] second = StringNote.plain(196, 5e-5, 3, 1.5).inNoise(60, 0).samples(RATE_HZ, Chance.seeded(2));
        int at = (int) (1.7 * RATE_HZ);
        for (int n = 0; n < second.length && at + n < x.length; n++) {
            x[at + n] += 0.5 * second[n];
        }
        NoteResult result = analyse(x);
        Disturbance found = result.disturbance().orElseThrow();
        assertThat(found.kind()).isEqualTo(Kind.SECOND_EVENT);
        assertThat(found.atSeconds()).isCloseTo(1.7, within(0.01));
        assertThat(result.warnings()).anyMatch(w -> w.startsWith("something else sounds at 1.70 s"));
        assertThat(result.pitch().found().orElseThrow().nearest()).hasToString("D3");
    }

    @Test
    void silenceAndNoiseHaveNoPitchAndSayWhy() {
        assertThat(analyse(new double[44_100]).pitch().refusal()).contains("the recording is silent");
        Random chance = Chance.seeded(9);
        double[] noise = chance.doubles(44_100).map(u -> 0.1 * (u - 0.5)).toArray();
        assertThat(analyse(noise).pitch().refusal().orElseThrow()).startsWith("no series of partials");
        assertThat(analyse(noise).decay().t30().refusal()).isPresent();
    }

    @Test
    void aClickIsTooShort() {
        double[] x = new double[2000];
        x[100] = 0.5;
        assertThat(analyse(x).pitch().refusal().orElseThrow()).startsWith("less than 0.15 s");
    }

    @Test
    void theStrongerChannelIsUsedAndSaid() {
        double[] x = STRING.samples(RATE_HZ, Chance.seeded(1));
        double[] weak = Arrays.stream(x).map(v -> 0.1 * v).toArray();
        NoteResult result = analyse(weak, x);
        assertThat(result.channelUsed()).isEqualTo(1);
        assertThat(result.warnings()).anyMatch(w -> w.startsWith("channel 2 of 2"));
    }

    @Test
    void clippingIsSaid() {
        double[] x = Arrays.stream(STRING.samples(RATE_HZ, Chance.seeded(1)))
                .map(v -> Math.max(-1, Math.min(1, 8 * v)))
                .toArray();
        assertThat(analyse(x).warnings()).anyMatch(w -> w.startsWith("clipped"));
    }

    @Test
    void peaksThatJustFitAreNoClipping() {
        double[] x = STRING.samples(RATE_HZ, Chance.seeded(1));
        for (int peak = 0; peak < 5; peak++) {
            x[10_000 + 1000 * peak] = 1;
        }
        assertThat(analyse(x).warnings()).noneMatch(w -> w.startsWith("clipped"));
    }
}
