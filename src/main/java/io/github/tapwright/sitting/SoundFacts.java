package io.github.tapwright.sitting;

import java.util.ArrayList;
import java.util.List;

/**
 * What reading a recording showed about it.
 *
 * @param format the file's format in words, such as "WAV, 24 bit"
 * @param sampleRateHz samples per second
 * @param channelCount channels in the file
 * @param channelUsed which channel was analysed, from 0
 * @param durationSeconds length of the sound
 * @param notices where the file departed from what its header promised; empty if nowhere
 */
public record SoundFacts(
        String format,
        double sampleRateHz,
        int channelCount,
        int channelUsed,
        double durationSeconds,
        List<String> notices) {

    /**
     * What a reader of the figures must know about the file: its notices, and which of several channels was used.
     *
     * @return one line each
     */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>(notices);
        if (channelCount > 1) {
            remarks.add(
                    "channel " + (channelUsed + 1) + " of " + channelCount + " is used, the one with the most energy");
        }
        return remarks;
    }

    /** Keeps a copy of the notices. */
    public SoundFacts {
        notices = List.copyOf(notices);
    }

    /**
     * These facts with more notices.
     *
     * @param more appended
     * @return changed facts
     */
    public SoundFacts withNotices(List<String> more) {
        List<String> all = new ArrayList<>(notices);
        all.addAll(more);
        return new SoundFacts(format, sampleRateHz, channelCount, channelUsed, durationSeconds, all);
    }
}
