package io.github.tapwright.note;

import java.util.List;

/**
 * The pitch of a plucked note to some cents, without its partials and decay.
 *
 * @param hz first partial of the series that explains the spectrum's peaks best, or why there is none
 * @param channelUsed which channel was listened to, from 0
 * @param warnings what the reader must know about the recording
 */
public record RoughPitch(Finding<Double> hz, int channelUsed, List<String> warnings) {

    /** Keeps a copy of the list. */
    public RoughPitch {
        warnings = List.copyOf(warnings);
    }
}
