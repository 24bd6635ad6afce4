package io.github.tapwright.sitting.live;

import java.util.List;
import java.util.Optional;

/**
 * How loud the input is just now, and what that tells the maker.
 *
 * @param peakDbfs largest sample of the last 0.3 s in any channel, dB re full scale; empty if all were zero
 * @param rmsDbfs root mean square of the last 0.3 s, in each 50 ms that of the louder channel, dB re full scale; empty
 *     if all were zero
 * @param noiseFloorDbfs what a tenth of the last ten seconds stays below: of the root mean squares of 50 ms each, the one
 *     a tenth of the way up, dB re full scale; empty in the first second, or if that moment held nothing but zeros
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
