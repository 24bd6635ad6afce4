package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;
import java.util.Locale;

/**
 * Decay of the whole note by backward integration with compensation for noise and for the end.
 *
 * <p>S(t) = ∫ₜ^{t₁} (x² − ν) dt + C with noise ν per sample; t₁ is where the note comes within 10 dB of the noise, or where
 * the recording ends; C is the energy after t₁ if the decay went on as it did last. Sources: [Schroeder1965],
 * [ISO3382-1], [Lundeby1995]. A range counts only if C is less than half of S at its lower end.
 *
 * <p>Uncertainty, first order, derived here: white noise moves x² by a variance 4x²ν + 2ν², ν itself is known to √(2/K) from K
 * samples, and C to 30 %; all three are carried through S, its logarithm and the straight line. Beats and stages make the curve
 * crooked: what is left over about the line adds s²/(Σ(t−t̄)²), with s² over the number of stays on one side of it less two.
 */
final class EnergyDecay {

    private static final double STEP_SECONDS = 0.002;
    private static final double FRAME_SECONDS = 0.02;
    private static final double ABOVE_NOISE = 10;
    private static final double LAST_DB = 12;
    private static final int FEWEST_FRAMES = 5;
    private static final double END_SHARE = 0.5;
    private static final double U_END = 0.3;

    private final double[] energy;
    private final double[] remaining;
    private final double rateHz;
    private final double noise;
    private final double noiseSamples;
    private final double correlation;
    private final double end;
    private final boolean endsInNoise;

    /**
     * Integrates.
     *
     * @param signal samples
     * @param from onset
     * @param to end of the free decay
     * @param rateHz samples per second
     * @param bandHz band of the signal: samples closer than 1/(2·band) are not independent
     * @param floor the noise
     */
    EnergyDecay(double[] signal, int from, int to, double rateHz, double bandHz, NoiseFloor floor) {
        this.rateHz = rateHz;
        this.noise = floor.meanSquare();
        this.correlation = Math.max(1, rateHz / (2 * bandHz));
        this.noiseSamples = floor.samples() / correlation;
        LateDecay late = new LateDecay(signal, from, to, noise);
        this.endsInNoise = late.last < to - late.frame;
        this.end = late.energyAfter();
        energy = new double[late.last - from];
        remaining = new double[energy.length + 1];
        remaining[energy.length] = end;
        for (int n = energy.length - 1; n >= 0; n--) {
            energy[n] = signal[from + n] * signal[from + n] - noise;
            remaining[n] = remaining[n + 1] + energy[n];
        }
    }

    /** The straight line through the frames' levels before t₁. */
    private final class LateDecay {
        private final int frame = (int) Math.round(FRAME_SECONDS * rateHz);
        private final int last;
        private final double slopePerSample;
        private final double powerAtLast;

        LateDecay(double[] signal, int from, int to, double noise) {
            double[] rms = Pluck.frames(signal, from, to, frame);
            int frames = 0;
            double top = 0;
            while (frames < rms.length) {
                top = Math.max(top, rms[frames]);
                double power = rms[frames] * rms[frames];
                if (rms[frames] < top && power < ABOVE_NOISE * noise) {
                    break;
                }
                frames++;
            }
            last = frames == rms.length ? to : from + frames * frame;
            int first = Math.max(0, frames - FEWEST_FRAMES);
            double floor = frames == 0 ? 0 : rms[frames - 1] * Math.pow(10, LAST_DB / 20);
            while (first > 0 && rms[first - 1] < floor) {
                first--;
            }
            double[] line = line(rms, first, frames, noise);
            slopePerSample = line[1] / frame;
            powerAtLast = Math.exp(line[0] + line[1] * ((last - from) / (double) frame - 0.5));
        }

        private double[] line(double[] rms, int first, int to, double noise) {
            double n = Math.max(1, to - first);
            double meanX = (first + to - 1) / 2.0;
            double meanY = 0;
            for (int f = first; f < to; f++) {
                meanY += logPower(rms[f], noise) / n;
            }
            double xx = 0;
            double xy = 0;
            for (int f = first; f < to; f++) {
                xx += (f - meanX) * (f - meanX);
                xy += (f - meanX) * (logPower(rms[f], noise) - meanY);
            }
            double slope = xx == 0 ? 0 : xy / xx;
            return new double[] {meanY - slope * meanX, slope};
        }

        private double logPower(double rms, double noise) {
            return Math.log(Math.max(rms * rms - noise, 1e-3 * rms * rms) + 1e-300);
        }

        /** Energy of the exponential after t₁; unbounded if the note does not die away. */
        double energyAfter() {
            return slopePerSample < 0 ? powerAtLast / -slopePerSample : Double.POSITIVE_INFINITY;
        }
    }

    private double levelDb(int n) {
        return 10 * Math.log10(Math.max(1e-300, remaining[n]) / remaining[0]);
    }

    /** Decibels of decay down to which the curve can be trusted. */
    private double heardDb() {
        int n = 0;
        while (n < energy.length && remaining[n] > end / END_SHARE) {
            n++;
        }
        return Math.max(0, -levelDb(n));
    }

    WholeDecay times() {
        if ((endsInNoise && !Double.isFinite(end)) || !(remaining[0] > 0)) {
            return WholeDecay.refused("too noisy: no decay stands clear of the noise; pluck harder or record closer");
        }
        if (!Double.isFinite(end)) {
            return WholeDecay.refused(
                    "the level does not fall within the recording; let the note ring and record longer");
        }
        return new WholeDecay(time(DecayRange.EDT), time(DecayRange.T20), time(DecayRange.T30), heardDb());
    }

    private Finding<DecayTime> time(DecayRange range) {
        double heard = heardDb();
        if (heard < range.toDb()) {
            return new Finding.NotFound<>(String.format(
                    Locale.ROOT,
                    "%s: only %.0f dB of decay%s; %s needs %.0f dB",
                    endsInNoise ? "too noisy" : "too short",
                    Math.floor(heard),
                    endsInNoise ? " stand clear of the noise" : "",
                    range,
                    range.toDb()));
        }
        int step = (int) Math.max(1, Math.round(STEP_SECONDS * rateHz));
        int first = 0;
        while (first + step < energy.length && levelDb(first) > -range.fromDb()) {
            first += step;
        }
        int last = first;
        while (last + step < energy.length && levelDb(last + step) >= -range.toDb()) {
            last += step;
        }
        return last < first + 2 * step
                ? new Finding.NotFound<>("dies away within a few milliseconds")
                : line(range, first, last, step);
    }

    private Finding<DecayTime> line(DecayRange range, int first, int last, int step) {
        int count = (last - first) / step + 1;
        double meanT = (first + last) / 2.0 / rateHz;
        double meanL = 0;
        double tt = 0;
        for (int n = first; n <= last; n += step) {
            meanL += levelDb(n) / count;
            tt += Math.pow(n / rateHz - meanT, 2);
        }
        double tl = 0;
        double ll = 0;
        for (int n = first; n <= last; n += step) {
            tl += (n / rateHz - meanT) * (levelDb(n) - meanL);
            ll += Math.pow(levelDb(n) - meanL, 2);
        }
        double slope = tl / tt;
        if (!(slope < 0)) {
            return new Finding.NotFound<>("the level does not fall over this range");
        }
        double seconds = -60 / slope;
        double left = Math.max(0, ll - tl * tl / tt);
        double freedom = Math.max(1, runs(first, last, step, meanT, meanL, slope) - 2);
        double crooked = Math.sqrt(left / tt / freedom);
        double all = Math.hypot(uSlope(first, last, step, meanT, tt), crooked);
        // Welch and Satterthwaite: noise is as good as known, crookedness is not. [GUM] G.4.
        double share = crooked == 0 ? 0 : crooked / all;
        double known = share == 0 ? Double.POSITIVE_INFINITY : freedom / Math.pow(share, 4);
        return new Finding.Found<>(
                new DecayTime(range, new Estimate(seconds, all * seconds / -slope, known), 1000 * left / ll));
    }

    /** How often the curve stays on one side of its line: every stay counts as one independent deviation. */
    private int runs(int first, int last, int step, double meanT, double meanL, double slope) {
        int runs = 0;
        boolean above = false;
        for (int n = first; n <= last; n += step) {
            boolean now = levelDb(n) > meanL + slope * (n / rateHz - meanT);
            runs += n == first || now != above ? 1 : 0;
            above = now;
        }
        return runs;
    }

    /** Carries the three causes of doubt through S and its logarithm to the slope. */
    private double uSlope(int first, int last, int step, double meanT, double tt) {
        double pull = 0;
        double sum = 0;
        double byNoise = 0;
        int next = first;
        for (int n = first; n < energy.length; n++) {
            if (n == next && n <= last) {
                pull += (n / rateHz - meanT) / tt * (10 / Math.log(10)) / remaining[n];
                next += step;
            }
            sum += pull;
            double heard = energy[n] > 0 ? energy[n] : 0;
            byNoise += pull * pull * (4 * heard * noise + 2 * noise * noise);
        }
        double uNoise = noise * Math.sqrt(2 / Math.max(1, noiseSamples));
        double byEnd = U_END * end * pull;
        return Math.sqrt(correlation * byNoise + Math.pow(uNoise * sum, 2) + byEnd * byEnd);
    }
}
