package io.github.tapwright.level.band;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.SectionFilter;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Measures the power of one channel in every band, block by block.
 *
 * <p>Filters of class 1 of [IEC61260-1], at rest before the first sample. A filter needs some 1/Br·f_m seconds
 * to settle (0.2 s at 20 Hz); a recording shorter than that has no meaningful level in its lowest bands.
 */
public final class BandMeter {

    private final List<Band> bands;
    private final List<SectionFilter> filters;
    private final double[] energy;
    private double[] work = new double[0];
    private long samples;

    /**
     * A meter at rest.
     *
     * @param bandwidth octaves or third-octaves
     * @param rate sample rate
     */
    public BandMeter(Bandwidth bandwidth, SampleRate rate) {
        this.bands = bandwidth.bandsWithin(rate.hertz());
        this.filters = bands.stream()
                .map(band -> new SectionFilter(BandDesign.sections(band, rate.hertz())))
                .toList();
        this.energy = new double[bands.size()];
    }

    /**
     * Takes the next samples.
     *
     * @param block re full scale, left unchanged
     * @param count how many of them count
     */
    public void take(double[] block, int count) {
        if (work.length < count) {
            work = Arrays.copyOf(work, count);
        }
        for (int b = 0; b < energy.length; b++) {
            System.arraycopy(block, 0, work, 0, count);
            filters.get(b).process(work, count);
            for (int n = 0; n < count; n++) {
                energy[b] += work[n] * work[n];
            }
        }
        samples += count;
    }

    /**
     * The mean square in every band over everything taken so far.
     *
     * @return lowest band first; empty if nothing was taken
     */
    public List<BandPower> powers() {
        if (samples == 0) {
            return List.of();
        }
        return IntStream.range(0, energy.length)
                .mapToObj(b -> new BandPower(bands.get(b), energy[b] / samples))
                .toList();
    }
}
