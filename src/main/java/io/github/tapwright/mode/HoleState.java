package io.github.tapwright.mode;

/** Whether the soundhole was open to the air during the taps. */
public enum HoleState {
    /** Nothing over the hole. */
    OPEN,
    /** Hole closed by a stiff, airtight cover. */
    COVERED,
    /** Nobody wrote it down. */
    UNKNOWN
}
