package io.github.tapwright.level.loudness;

/**
 * Specific loudness along the critical-band rate: straight pieces, flat on a band's own core and falling
 * towards higher bands, because a sound masks upwards.
 *
 * <p>Walking up from 0 Bark, the loudness jumps to a core that is higher, and otherwise falls with the steepness
 * of table A.9 (by its own height and the band) until it meets a core. Total loudness is the area below. One
 * pattern is used again for the next moment. Source: [ISO532-1], annex A.
 */
final class LoudnessPattern {

    static final double STEP_BARK = 0.1;
    static final int STEPS = 240;

    private static final int MOST_PIECES = 512;

    /** With bands ending this much later than table A.8 says, the standard's printed values come back to 5e-5. */
    private static final double LATE_BARK = 1e-4;

    private final double[] end = new double[MOST_PIECES];
    private final double[] from = new double[MOST_PIECES];
    private final double[] to = new double[MOST_PIECES];
    private int pieces;
    private double totalSone;

    /** Walks over new cores, sone per Bark, shape [21]. */
    void trace(double[] core) {
        pieces = 0;
        totalSone = 0;
        for (int band = 0; band < core.length; band++) {
            traceBand(band, core[band]);
        }
    }

    double totalSone() {
        return totalSone;
    }

    /** Specific loudness at 0.1, 0.2 … 24 Bark, sone per Bark. */
    double[] specific() {
        double[] specific = new double[STEPS];
        int piece = 0;
        for (int k = 0; k < STEPS; k++) {
            double z = (k + 1) * STEP_BARK;
            while (z > end[piece]) {
                piece++;
            }
            double start = piece == 0 ? 0 : end[piece - 1];
            specific[k] = from[piece] + (to[piece] - from[piece]) * (z - start) / (end[piece] - start);
        }
        return specific;
    }

    private void traceBand(int band, double core) {
        double bandEnd = LoudnessTables.BAND_END_BARK[band] + LATE_BARK;
        double z = pieces == 0 ? 0 : end[pieces - 1];
        double height = pieces == 0 ? core : Math.max(core, to[pieces - 1]);
        int column = Math.min(Math.max(band - 1, 0), LoudnessTables.SLOPE[0].length - 1);
        while (height > core && z < bandEnd) {
            int range = range(height);
            double slope = LoudnessTables.SLOPE[range][column];
            double bottom = Math.max(core, LoudnessTables.SLOPE_RANGE[range]);
            double reached = z + (height - bottom) / slope;
            double next = Math.min(reached, bandEnd);
            double lower = reached <= bandEnd ? bottom : height - slope * (bandEnd - z);
            add(z, next, height, lower);
            z = next;
            height = lower;
        }
        if (z < bandEnd) {
            add(z, bandEnd, height, height);
        }
    }

    /** The range a height lies in: the first whose lower end is below it. */
    private static int range(double height) {
        int range = 0;
        while (LoudnessTables.SLOPE_RANGE[range] >= height) {
            range++;
        }
        return range;
    }

    private void add(double start, double stop, double heightAtStart, double heightAtStop) {
        end[pieces] = stop;
        from[pieces] = heightAtStart;
        to[pieces] = heightAtStop;
        pieces++;
        totalSone += (stop - start) * (heightAtStart + heightAtStop) / 2;
    }
}
