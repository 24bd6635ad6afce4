package io.github.tapwright.sitting.listening;

import io.github.tapwright.sitting.Stretch;

/**
 * One of the sounds of a blind listening.
 *
 * @param stretch where it comes from
 * @param loudnessLufs its loudness as recorded, in what is played of it
 * @param gainDb how far it is turned down to be as loud as the others, 0 dB or less
 */
public record HeardSound(Stretch stretch, double loudnessLufs, double gainDb) {

    /** Refuses to turn a sound up. */
    public HeardSound {
        if (!(gainDb <= 0)) {
            throw new IllegalArgumentException("sounds are only turned down, not by " + gainDb + " dB");
        }
    }
}
