package io.github.tapwright.level;

/** Watches for clipping: three samples in a row at full scale, as no unclipped sound is likely to make. */
final class FullScaleRun {

    private static final double FULL_SCALE = 0.99996; // 16 bits reach 0.99997
    private static final int CLIPPED_RUN = 3;

    private int run;
    private boolean clipped;

    void take(double[] samples, int count) {
        for (int n = 0; n < count; n++) {
            run = Math.abs(samples[n]) >= FULL_SCALE ? run + 1 : 0;
            clipped |= run >= CLIPPED_RUN;
        }
    }

    boolean clipped() {
        return clipped;
    }
}
