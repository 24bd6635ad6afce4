package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import java.util.Optional;

/**
 * What a calibration holds for: one microphone at one input and one setting of its gain, and nothing else.
 *
 * @param microphone which microphone; empty if nobody wrote it down
 * @param gain input and gain as the maker reads them, such as "input 1, knob at 4"; empty if nobody wrote them down
 */
public record CalibratedInput(Optional<String> microphone, Optional<String> gain) {

    /** Nobody wrote it down. */
    public static final CalibratedInput UNKNOWN = new CalibratedInput(Optional.empty(), Optional.empty());

    /** Refuses texts of several lines. */
    public CalibratedInput {
        microphone = Entry.line("the microphone", microphone);
        gain = Entry.line("the gain", gain);
    }
}
