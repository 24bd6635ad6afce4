package io.github.tapwright.sitting.live;

import java.util.List;
import java.util.Optional;

/**
 * How loud the input is just now, and what that tells the maker.
 *
 * @param peakDbfs largest sample of the last 0.3 s, dB re full scale; empty if all were zero
 * @param rmsDbfs root mean square of the last 0.3 s, dB re full scale; empty if all were zero
 * @param noiseFloorDbfs root mean square of the quietest tenth of the last ten seconds; empty in the first second, or
 *     if all were zero
 * @param clipped whether samples were cut flat at full scale in the last two seconds
 * @param hints what to mend, in words; empty if all is well
 */
public record LevelNow(
        Optional<Double> peakDbfs,
        Optional<Double> rmsDbfs,
        Optional<Double> noiseFloorDbfs,
        boolean clipped,
        List<String> hints) {

    /** Keeps a copy of the hints. */
    public LevelNow {
        hints = List.copyOf(hints);
    }
}
