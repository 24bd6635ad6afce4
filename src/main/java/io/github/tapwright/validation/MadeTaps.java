package io.github.tapwright.validation;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Taps on a body whose truth is known: every strike sets each mode ringing as Re(c·exp(−σt + iωt)) at one instant, c scattered about
 * its usual size, in white noise.
 *
 * @param modes of the body
 * @param strikes how many
 * @param noiseRms σₙ, where full scale is 1
 * @param seed of all chance
 */
record MadeTaps(List<Mode> modes, int strikes, double noiseRms, long seed) {

    static final double RATE_HZ = 24_000;
    static final double SPACING_SECONDS = 1.3;

    private static final double LEAD_SECONDS = 0.6;

    MadeTaps {
        modes = List.copyOf(modes);
    }

    /**
     * One resonance of the body.
     *
     * @param hertz undamped frequency, f = |s|/2π
     * @param q Q = |s|/2σ
     * @param amplitude |c| of a usual strike
     */
    record Mode(double hertz, double q, double amplitude) {

        double decayRatePerSecond() {
            return Math.PI * hertz / q;
        }

        double dampedHz() {
            return hertz * Math.sqrt(1 - 1 / (4 * q * q));
        }
    }

    TapResult analysed() {
        Random chance = new Random(seed);
        double[] samples = new double[(int) (RATE_HZ * (LEAD_SECONDS + strikes * SPACING_SECONDS))];
        for (int k = 0; k < strikes; k++) {
            int start = (int) (RATE_HZ * (LEAD_SECONDS + k * SPACING_SECONDS));
            double strength = Math.exp(0.2 * chance.nextGaussian());
            for (Mode mode : modes) {
                ring(samples, start, mode, strength * (1 + 0.05 * chance.nextGaussian()));
            }
        }
        for (int n = 0; n < samples.length; n++) {
            samples[n] += noiseRms * chance.nextGaussian();
        }
        TapTrack track = TapTrack.read(Recording.of(new SampleRate(RATE_HZ), samples).stream(), TapSettings.STANDARD);
        return TapAnalysis.analyse(List.of(track), TapSettings.STANDARD, HoleState.UNKNOWN);
    }

    private static void ring(double[] samples, int start, Mode mode, double strength) {
        double turn = 2 * Math.PI * mode.dampedHz() / RATE_HZ;
        double fall = mode.decayRatePerSecond() / RATE_HZ;
        for (int n = start; n < samples.length; n++) {
            int since = n - start;
            samples[n] += strength * mode.amplitude() * Math.exp(-fall * since) * Math.sin(turn * since);
        }
    }

    static Resonance nearest(TapResult result, double hertz) {
        return result.resonances().stream()
                .map(NamedResonance::resonance)
                .min(Comparator.comparingDouble(r -> Math.abs(r.frequencyHz().value() - hertz)))
                .orElseThrow();
    }
}
