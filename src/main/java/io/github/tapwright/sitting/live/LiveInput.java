package io.github.tapwright.sitting.live;

import java.util.List;
import java.util.Optional;

/** The machine's sound inputs. */
public interface LiveInput {

    /**
     * What one can record from now.
     *
     * @return the system's own order; empty if there is nothing
     */
    List<InputDevice> devices();

    /**
     * Opens an input and starts to listen.
     *
     * @param device an {@link InputDevice#name()}; empty for the system's choice
     * @param format how to read it
     * @return the running input; the caller closes it
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such device, or it does not offer
     *     the format
     * @throws io.github.tapwright.recording.UnreadableRecordingException if the machine has no input, or it is in use
     */
    RunningInput open(Optional<String> device, LiveFormat format);
}
