package io.github.tapwright.level.band;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How wide the bands are: octaves or thirds of octaves, base ten.
 *
 * <p>An octave is the ratio G = 10^(3/10). Source: [IEC61260-1].
 */
public enum Bandwidth {
    /** Octaves. */
    OCTAVE(1),
    /** Thirds of octaves, ten to the decade. */
    THIRD_OCTAVE(3);

    /** G = 10^(3/10), the octave ratio. */
    static final double OCTAVE_RATIO = Math.pow(10, 0.3);

    private static final double LOWEST_HZ = 20;
    private static final double HIGHEST_HZ = 20_000;

    private final int bandsPerOctave;

    Bandwidth(int bandsPerOctave) {
        this.bandsPerOctave = bandsPerOctave;
    }

    /**
     * How many bands make an octave.
     *
     * @return b, 1 or 3
     */
    public int bandsPerOctave() {
        return bandsPerOctave;
    }

    /**
     * The bands with mid-band frequencies from 20 Hz to 20 kHz that end below half the sample rate.
     *
     * @param rateHz sample rate
     * @return lowest first; at 44.1 kHz the third-octave band of 20 kHz is missing
     */
    public List<Band> bandsWithin(double rateHz) {
        return IntStream.rangeClosed(-6 * bandsPerOctave, 5 * bandsPerOctave)
                .mapToObj(index -> new Band(this, index))
                .filter(band -> band.nominalHz() >= LOWEST_HZ && band.nominalHz() <= HIGHEST_HZ)
                .filter(band -> band.upperHz() < rateHz / 2)
                .toList();
    }
}
