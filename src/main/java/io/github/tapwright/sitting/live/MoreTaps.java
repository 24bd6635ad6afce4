package io.github.tapwright.sitting.live;

import io.github.tapwright.mode.Resonance;
import java.util.Locale;
import java.util.Optional;

/**
 * How many more taps bring a resonance's frequency to a wanted standard uncertainty.
 *
 * <p>n taps of the same kind leave a mean that is sure to u = s/√n. So with u from n taps, n·(u/wanted)² taps are needed in
 * all. This assumes that what makes u is the spread from tap to tap and the noise: that further taps are like these,
 * and that none is rejected. What all taps share (a close neighbour, a cut-off decay, the support, the air) no number of
 * taps takes away. The final word is the analysis of the whole recording. Source of u = s/√n: JCGM 100 (GUM), 4.2.3.
 *
 * @param nowHz standard uncertainty now
 * @param wantedHz standard uncertainty wanted
 * @param more further usable taps; 0 if it is reached; empty if that cannot be told
 * @param reason why it cannot be told; empty if it can
 */
public record MoreTaps(double nowHz, double wantedHz, Optional<Integer> more, String reason) {

    /** Below this the spread from tap to tap is not known. */
    private static final int FEWEST = 3;

    private static final int MOST = 40;

    /**
     * Counts.
     *
     * @param resonance as the latest fit found it
     * @param wantedHz standard uncertainty wanted, greater than 0
     * @return how many more, or why nobody can tell
     */
    public static MoreTaps until(Resonance resonance, double wantedHz) {
        if (!(wantedHz > 0)) {
            throw new IllegalArgumentException("an uncertainty greater than 0 can be wanted, not " + wantedHz);
        }
        double now = resonance.frequencyHz().standardUncertainty();
        int taps = resonance.strikeCount();
        if (taps < FEWEST) {
            return new MoreTaps(now, wantedHz, Optional.empty(), "the spread from tap to tap shows with three or more");
        }
        double needed = taps * (now / wantedHz) * (now / wantedHz);
        int more = (int) Math.max(0, Math.min(MOST + 1.0, Math.ceil(needed - 1e-9) - taps));
        return more <= MOST
                ? new MoreTaps(now, wantedHz, Optional.of(more), "")
                : new MoreTaps(
                        now,
                        wantedHz,
                        Optional.empty(),
                        "more than " + MOST + " taps would be needed; mend"
                                + " the set-up instead: support, noise, place of the strike");
    }

    /**
     * In words.
     *
     * @param name of the resonance, such as "main top"
     * @return such as "2 more taps bring main top to ±0.3 Hz"
     */
    public String text(String name) {
        String wanted = String.format(Locale.ROOT, "±%s Hz", plain(wantedHz));
        if (more.isEmpty()) {
            return "cannot tell how many taps bring " + name + " to " + wanted + ": " + reason;
        }
        int count = more.get();
        if (count == 0) {
            return String.format(Locale.ROOT, "%s is known to ±%s Hz: enough", name, plain(nowHz));
        }
        return count + (count == 1 ? " more tap brings " : " more taps bring ") + name + " to " + wanted;
    }

    private static String plain(double hz) {
        return String.format(Locale.ROOT, hz < 0.1 ? "%.2g" : "%.1f", hz);
    }
}
