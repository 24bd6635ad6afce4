package io.github.tapwright.sitting.live;

import java.util.List;

/**
 * A live input of this machine.
 *
 * @param name how the system calls it, and how one asks for it
 * @param description what the system says about it; may be empty
 * @param formats what it offers of {@link LiveFormat#all()}; the system may convert on the way to some of them
 */
public record InputDevice(String name, String description, List<LiveFormat> formats) {

    /** Keeps a copy of the list. */
    public InputDevice {
        formats = List.copyOf(formats);
    }
}
