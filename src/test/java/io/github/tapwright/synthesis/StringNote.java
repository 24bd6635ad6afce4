package io.github.tapwright.synthesis;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.Set;
import java.util.random.RandomGenerator;

/**
 * A plucked note with known truth: a stiff string that swings in two planes, in white noise.
 *
 * <p>Partial n of plane p is A_p·sin(nπ·place)/n · exp(−σ_p(n)·t)·cos(2πf_p(n)·t + φ), f(n) = n·f₁·√((1+Bn²)/(1+B)), with
 * σ_p(n) = ln(1000)/T_p·(1 + slope·(n−1)). The second plane is tuned sharp. Everything starts at once
 * after the lead-in. Noise is so many decibels under the root mean square of the first tenth of a second.
 *
 * @param pitchHz f₁ of the first plane
 * @param stretch B
 * @param place where it is plucked, as a fraction of the length
 * @param damping how its two planes die away
 * @param take how it is recorded
 * @param missing numbers of partials left out
 */
public record StringNote(
        double pitchHz, double stretch, double place, Damping damping, Take take, Set<Integer> missing) {

    /**
     * How the string dies away.
     *
     * @param earlySeconds 60 dB time of the first plane's first partial
     * @param lateSeconds the same of the second plane; the larger
     * @param lateShare amplitude of the second plane re the first; 0 for one plane only
     * @param detuneCents how much sharper the second plane is
     * @param slope how much faster each further partial dies
     */
    public record Damping(
            double earlySeconds, double lateSeconds, double lateShare, double detuneCents, double slope) {}

    /**
     * How the note is recorded.
     *
     * @param seconds length after the pluck
     * @param leadInSeconds noise before the pluck
     * @param snrDb signal-to-noise ratio
     */
    public record Take(double seconds, double leadInSeconds, double snrDb) {}

    private static final double PEAK = 0.2;
    private static final double HIGHEST_OF_RATE = 0.42;
    private static final double FIRST_MOMENT_SECONDS = 0.1;

    /** A string that dies in one stage, plucked where all partials sound. */
    public static StringNote plain(double pitchHz, double stretch, double decaySeconds, double seconds) {
        return new StringNote(
                pitchHz,
                stretch,
                0.137,
                new Damping(decaySeconds, decaySeconds, 0, 0, 0),
                new Take(seconds, 0.2, 60),
                Set.of());
    }

    public StringNote pluckedAt(double fraction) {
        return new StringNote(pitchHz, stretch, fraction, damping, take, missing);
    }

    public StringNote inTwoPlanes(double late, double share, double cents) {
        return dying(new Damping(damping.earlySeconds, late, share, cents, damping.slope));
    }

    public StringNote damped(double slope) {
        return dying(
                new Damping(damping.earlySeconds, damping.lateSeconds, damping.lateShare, damping.detuneCents, slope));
    }

    private StringNote dying(Damping changed) {
        return new StringNote(pitchHz, stretch, place, changed, take, missing);
    }

    public StringNote inNoise(double db, double leadIn) {
        return new StringNote(pitchHz, stretch, place, damping, new Take(take.seconds, leadIn, db), missing);
    }

    public StringNote without(Integer... numbers) {
        return new StringNote(pitchHz, stretch, place, damping, take, Set.of(numbers));
    }

    /** 60 dB time of the first plane's first partial. */
    public double earlySeconds() {
        return damping.earlySeconds;
    }

    /** Frequency of partial n in the first plane. */
    public double hz(int n) {
        return n * pitchHz * Math.sqrt((1 + stretch * n * n) / (1 + stretch));
    }

    public double earlySeconds(int n) {
        return damping.earlySeconds / (1 + damping.slope * (n - 1));
    }

    public double lateSeconds(int n) {
        return damping.lateSeconds / (1 + damping.slope * (n - 1));
    }

    /** The recording, phases and noise by chance. */
    public Recording recording(double rateHz, RandomGenerator chance) {
        return Recording.of(new SampleRate(rateHz), samples(rateHz, chance));
    }

    public double[] samples(double rateHz, RandomGenerator chance) {
        int lead = (int) Math.round(take.leadInSeconds * rateHz);
        double[] x = new double[lead + (int) Math.round(take.seconds * rateHz)];
        for (int n = 1; hz(n) < HIGHEST_OF_RATE * rateHz; n++) {
            double amplitude = missing.contains(n) ? 0 : Math.sin(n * Math.PI * place) / n;
            ring(x, lead, rateHz, hz(n), earlySeconds(n), amplitude, chance);
            ring(
                    x,
                    lead,
                    rateHz,
                    hz(n) * Math.pow(2, damping.detuneCents / 1200),
                    lateSeconds(n),
                    damping.lateShare * amplitude,
                    chance);
        }
        scaleAndAddNoise(x, lead, rateHz, chance);
        return x;
    }

    private static void ring(
            double[] x, int from, double rateHz, double hz, double decay, double amplitude, RandomGenerator chance) {
        double phase = 2 * Math.PI * chance.nextDouble();
        if (Math.abs(amplitude) < 1e-12) {
            return;
        }
        double sigma = Math.log(1000) / decay / rateHz;
        double keep = Math.exp(-sigma);
        double turnRe = keep * Math.cos(2 * Math.PI * hz / rateHz);
        double turnIm = keep * Math.sin(2 * Math.PI * hz / rateHz);
        double re = amplitude * Math.cos(phase);
        double im = amplitude * Math.sin(phase);
        for (int n = from; n < x.length; n++) {
            x[n] += re;
            double next = re * turnRe - im * turnIm;
            im = re * turnIm + im * turnRe;
            re = next;
        }
    }

    private void scaleAndAddNoise(double[] x, int lead, double rateHz, RandomGenerator chance) {
        double peak = 0;
        double sum = 0;
        int moment = (int) Math.min(x.length - (double) lead, FIRST_MOMENT_SECONDS * rateHz);
        for (int n = lead; n < x.length; n++) {
            peak = Math.max(peak, Math.abs(x[n]));
            sum += n < lead + moment ? x[n] * x[n] : 0;
        }
        double noise = PEAK / peak * Math.sqrt(sum / moment) * Math.pow(10, -take.snrDb / 20);
        for (int n = 0; n < x.length; n++) {
            x[n] = x[n] * PEAK / peak + noise * chance.nextGaussian();
        }
    }
}
