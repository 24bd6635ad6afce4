package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import java.util.Optional;

/**
 * The microphone of a sitting and how it was set.
 *
 * @param model which microphone; empty if unknown
 * @param distanceMm from the top to the microphone, 1 to 10,000 mm; empty if unknown
 * @param gain the input gain as the maker reads it, such as "30 dB" or "knob at 4"; empty if unknown
 */
public record Microphone(Optional<String> model, Optional<Double> distanceMm, Optional<String> gain) {

    /** Nobody wrote it down. */
    public static final Microphone UNKNOWN = new Microphone(Optional.empty(), Optional.empty(), Optional.empty());

    /** Refuses distances outside a room. */
    public Microphone {
        model = Entry.line("the microphone", model);
        distanceMm = Entry.figure("the microphone's distance in mm", distanceMm, 1, 10_000);
        gain = Entry.line("the gain", gain);
    }
}
