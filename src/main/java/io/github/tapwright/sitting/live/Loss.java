package io.github.tapwright.sitting.live;

import java.util.Locale;

/**
 * Sound that did not get into a recording although the microphone heard it.
 *
 * @param atSeconds where in the recording it is missing
 * @param frames how many samples of each channel, as exactly as could be told
 * @param reason why, in words
 */
public record Loss(double atSeconds, long frames, String reason) {

    /**
     * In words, for the maker.
     *
     * @param format of the recording
     * @return one line
     */
    public String text(LiveFormat format) {
        return String.format(
                Locale.ROOT,
                "about %.0f ms of sound (%d samples) are missing at %.1f s: %s",
                1000.0 * frames / format.rateHz(),
                frames,
                atSeconds,
                reason);
    }
}
