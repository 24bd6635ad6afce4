package io.github.tapwright.climate;

/**
 * Where a sensitivity to humidity comes from.
 */
public enum SensitivityBasis {
    /** From this instrument's own history. */
    LEARNT,
    /** Assumed, an estimate and not measured: the history has fewer than four sittings. */
    ASSUMED_TOO_FEW_SITTINGS,
    /** Assumed, an estimate and not measured: the history's sittings were all in about the same weather. */
    ASSUMED_TOO_LITTLE_RANGE,
    /** Assumed, an estimate and not measured: in the history humidity ran with time, and a drift would be learnt as humidity. */
    ASSUMED_RAN_WITH_TIME
}
