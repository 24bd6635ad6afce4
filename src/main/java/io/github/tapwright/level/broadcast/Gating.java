package io.github.tapwright.level.broadcast;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Loudness over the parts of a programme that are not silence.
 *
 * <p>L = −0.691 + 10 lg(mean weighted power). Blocks of 400 ms every 100 ms below −70 LUFS are dropped, then
 * those 10 LU or more below the loudness of what is left; the rest is the integrated loudness. The range is the
 * distance of the 10th and 95th percentile of the 3 s loudness after gates at −70 LUFS and −20 LU; of n values in
 * order the percentile p is the one nearest to place 1 + (n − 1)·p. Sources: [BS1770], annex 1; [EBU3342], 3.1 and 5.
 */
final class Gating {

    private static final double OFFSET_DB = -0.691;
    private static final double ABSOLUTE_GATE_LUFS = -70;
    private static final double INTEGRATED_GATE_LU = -10;
    private static final double RANGE_GATE_LU = -20;

    private Gating() {}

    static double lufs(double power) {
        return OFFSET_DB + 10 * Math.log10(power);
    }

    static OptionalDouble integratedLufs(double[] blockPowers) {
        OptionalDouble mean =
                Arrays.stream(gated(blockPowers, INTEGRATED_GATE_LU)).average();
        return mean.isPresent() ? OptionalDouble.of(lufs(mean.getAsDouble())) : OptionalDouble.empty();
    }

    static OptionalDouble rangeLu(double[] shortTermPowers) {
        double[] kept = gated(shortTermPowers, RANGE_GATE_LU);
        if (kept.length == 0) {
            return OptionalDouble.empty();
        }
        Arrays.sort(kept);
        return OptionalDouble.of(lufs(nearest(kept, 0.95)) - lufs(nearest(kept, 0.10)));
    }

    private static double nearest(double[] sorted, double fraction) {
        return sorted[(int) Math.round((sorted.length - 1) * fraction)];
    }

    static OptionalDouble largestLufs(double[] powers) {
        double most = Arrays.stream(powers).max().orElse(0);
        return most > 0 ? OptionalDouble.of(lufs(most)) : OptionalDouble.empty();
    }

    private static double[] gated(double[] powers, double relativeGateLu) {
        double[] heard = above(powers, ABSOLUTE_GATE_LUFS);
        double mean = Arrays.stream(heard).average().orElse(0);
        return heard.length == 0 ? heard : above(heard, lufs(mean) + relativeGateLu);
    }

    private static double[] above(double[] powers, double gateLufs) {
        return Arrays.stream(powers).filter(p -> lufs(p) > gateLufs).toArray();
    }
}
