package io.github.tapwright.signal;

import java.util.Optional;

/**
 * Watches one channel for clipping: three samples in a row at full scale, as no unclipped sound is likely to make.
 *
 * <p>A lone sample at full scale is only a peak that just fits. Tops cut flat below full scale are not seen.
 */
public final class FullScaleRun {

    private static final double FULL_SCALE = 0.99996; // 16 bits reach 0.99997
    private static final int CLIPPED_RUN = 3;

    private int run;
    private long clipped;

    /**
     * Takes the next sample.
     *
     * @param sample re full scale
     * @return whether the channel has now stayed at full scale for three samples or more
     */
    public boolean take(double sample) {
        run = Math.abs(sample) >= FULL_SCALE ? run + 1 : 0;
        if (run >= CLIPPED_RUN) {
            clipped += run == CLIPPED_RUN ? CLIPPED_RUN : 1;
        }
        return run >= CLIPPED_RUN;
    }

    /**
     * How many samples lie in runs of three or more at full scale.
     *
     * @return 0 if the channel is not clipped
     */
    public long clippedSamples() {
        return clipped;
    }

    /**
     * The warning that a recording is clipped.
     *
     * @param clippedSamples of the channels that were used
     * @param consequence what is wrong because of it
     * @return empty if no sample is clipped
     */
    public static Optional<String> warning(long clippedSamples, String consequence) {
        return clippedSamples == 0
                ? Optional.empty()
                : Optional.of("clipped: " + clippedSamples + " samples at full scale; " + consequence
                        + "; turn the gain down and record again");
    }
}
