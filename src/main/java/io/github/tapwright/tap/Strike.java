package io.github.tapwright.tap;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One strike found in a recording, with its verdict.
 *
 * @param source which recording of the set it came from, counted from 0
 * @param onsetSeconds when the contact began, from the start of that recording
 * @param peakDbfs largest sample of the strike, dB re full scale
 * @param snrDb power of the first 0.1 s of the decay over that of the recording's quiet moments, in the analysis band and
 *     without mains hum, dB
 * @param rejections every reason against it, worst first; empty if the strike is used
 */
public record Strike(int source, double onsetSeconds, double peakDbfs, double snrDb, List<Rejection> rejections) {

    /** Keeps a copy of the reasons. */
    public Strike {
        rejections = List.copyOf(rejections);
    }

    /**
     * Whether the strike takes part in the curve and the fit.
     *
     * @return true if nothing speaks against it
     */
    public boolean used() {
        return rejections.isEmpty();
    }

    /**
     * Why it takes no part.
     *
     * @return every reason with its figure, such as "clipped (3 samples); cut off (next strike after 0.11 s)"; empty if used
     */
    public String reasons() {
        return rejections.stream().map(Rejection::text).collect(Collectors.joining("; "));
    }
}
