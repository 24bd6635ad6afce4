package io.github.tapwright.synthesis;

import io.github.tapwright.tap.RejectionReason;

/** What can be made wrong with a strike on purpose, and the reason an analysis should give. */
public enum PlantedFault {
    /** Driven to 1.6 times full scale and cut at full scale. */
    CLIPPED(RejectionReason.CLIPPED),
    /** Cut flat at half of its own peak, below full scale, as a preamplifier does. */
    FLAT_TOPPED(RejectionReason.CLIPPED),
    /** A second contact 15 to 120 ms later, at 0.3 to 0.9 of the strength. */
    DOUBLE_STRIKE(RejectionReason.DOUBLE_STRIKE),
    /** The next strike comes after 0.2 s. */
    NEXT_TOO_EARLY(RejectionReason.CUT_OFF),
    /** The recording stops 0.12 s after the onset; only for the last strike. */
    RECORDING_ENDS(RejectionReason.CUT_OFF),
    /** Only 3 dB above the room's noise, by the scene's own definition of the ratio. */
    TOO_QUIET(RejectionReason.TOO_QUIET);

    private final RejectionReason reason;

    PlantedFault(RejectionReason reason) {
        this.reason = reason;
    }

    /** The reason an analysis should find. */
    public RejectionReason reason() {
        return reason;
    }
}
