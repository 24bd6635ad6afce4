package io.github.tapwright.level;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.SectionFilter;
import java.util.Optional;

/**
 * Measures the sound levels of one channel block by block.
 *
 * <p>Filters and time weightings are at rest before the first sample. Source: [IEC61672-1].
 */
public final class SoundLevelMeter {

    /** So many samples stay near the processor while they pass all filters. */
    private static final int AT_ONCE = 4096;

    private final SampleRate rate;
    private final SectionFilter filterA;
    private final SectionFilter filterC;
    private final SectionFilter filterZ;
    private final TimeWeightedMaximum fast;
    private final TimeWeightedMaximum slow;
    private final double[] work = new double[AT_ONCE];
    private double energyA;
    private double energyC;
    private double energyZ;
    private double peakC;
    private long samples;

    /**
     * A meter at rest.
     *
     * @param rate sample rate, above 2,000 Hz
     */
    public SoundLevelMeter(SampleRate rate) {
        this.rate = rate;
        this.filterA = new SectionFilter(FrequencyWeighting.A.sections(rate));
        this.filterC = new SectionFilter(FrequencyWeighting.C.sections(rate));
        this.filterZ = new SectionFilter(FrequencyWeighting.Z.sections(rate));
        this.fast = new TimeWeightedMaximum(TimeWeighting.FAST, rate);
        this.slow = new TimeWeightedMaximum(TimeWeighting.SLOW, rate);
    }

    /**
     * Takes the next samples.
     *
     * @param block re full scale, left unchanged
     * @param count how many of them count
     */
    public void take(double[] block, int count) {
        for (int from = 0; from < count; from += AT_ONCE) {
            some(block, from, Math.min(AT_ONCE, count - from));
        }
    }

    private void some(double[] block, int from, int count) {
        samples += count;
        double[] a = filtered(filterA, block, from, count);
        energyA += energy(a, count);
        TimeWeightedMaximum.takeBoth(fast, slow, a, count);
        double[] c = filtered(filterC, block, from, count);
        energyC += energy(c, count);
        peakC = Math.max(peakC, peak(c, count));
        energyZ += energy(filtered(filterZ, block, from, count), count);
    }

    /**
     * The levels of everything taken so far.
     *
     * @param reference what the samples mean
     * @return the levels, or empty if there was no sound at all, which has no level
     */
    public Optional<SoundLevels> levels(LevelReference reference) {
        if (!(energyA > 0) || !(energyC > 0) || !(energyZ > 0)) {
            return Optional.empty();
        }
        return Optional.of(new SoundLevels(
                reference.levelOf(energyA / samples),
                reference.levelOf(energyC / samples),
                reference.levelOf(energyZ / samples),
                reference.levelOf(fast.meanSquare()),
                reference.levelOf(slow.meanSquare()),
                reference.levelOf(energyA / rate.hertz()),
                reference.levelOf(peakC * peakC),
                rate.seconds(samples)));
    }

    private double[] filtered(SectionFilter filter, double[] block, int from, int count) {
        System.arraycopy(block, from, work, 0, count);
        filter.process(work, count);
        return work;
    }

    private static double peak(double[] x, int count) {
        double peak = 0;
        for (int n = 0; n < count; n++) {
            double size = Math.abs(x[n]);
            if (size > peak) {
                peak = size;
            }
        }
        return peak;
    }

    private static double energy(double[] x, int count) {
        double sum = 0;
        for (int n = 0; n < count; n++) {
            sum += x[n] * x[n];
        }
        return sum;
    }
}
